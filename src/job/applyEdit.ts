import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import type { Id } from '../units/types';
import { jobWords } from '../words/en/job';
import { addRecord, removeRecord, setValue, setValues } from './change';
import { dependents, type Named } from './dependents';
import { drawRoom, wallLength } from './drawRoom';
import type { Edit } from './edit';
import { forget } from './forget';
import { moveCorner, movePartition, moveWall } from './moveWalls';
import { checkJob } from './parse';
import { faultAt, fromPointer, type Path, stepInto, valueAt } from './pointer';
import { answerQuestion, withoutName } from './questions';
import { renameRecord } from './renameRecord';
import type { Job } from './schema';
import { share } from './share';
import { joinWalls, splitWall } from './splitWalls';

/**
 * The job after an edit, checked as if it had been opened from a file, or the first fault; the job given is never
 * touched. An edit that changes nothing answers the same job.
 */
export const applyEdit = (job: Job, edit: Edit): Result<Job, Fault> => {
  const changed = change(job, edit);
  if (!changed.ok) return changed;
  const checked = checkJob(changed.value);
  return checked.ok ? ok(share(job, checked.value)) : checked;
};

const missing = (what: keyof typeof jobWords.what | 'option', id: Id, path: Path): Result<never, Fault> =>
  err(
    faultAt(
      'no-such-record',
      path,
      jobWords.dangling({ id, what: what === 'option' ? jobWords.option : jobWords.what[what] }),
    ),
  );

const change = (job: Job, edit: Edit): Result<unknown, Fault> => {
  switch (edit.edit) {
    case 'set value':
      return setValue(withoutName(job, edit.path), edit.path, edit.value);
    case 'set values':
      return setValues(
        edit.values.reduce((named, { path }) => withoutName(named, path), job),
        edit.values,
      );
    case 'set field': {
      const at = recordAt(job, edit);
      return at === undefined ? noRecord(edit) : setValue(job, `${edit.list}/${at}${edit.field}`, edit.value);
    }
    case 'rename record': {
      const at = recordAt(job, edit);
      return at === undefined ? noRecord(edit) : renameRecord(job, edit, at, edit.to);
    }
    case 'remove together':
      return removeTogether(job, edit);
    case 'draw room':
      return ok({ ...job, site: { ...job.site, outline: drawRoom(job.site.outline, edit.walls) } });
    case 'wall length':
      return wallLength(job, edit.wall, edit.length);
    case 'split wall':
      return splitWall(job, edit.wall, edit.at, edit.id);
    case 'join walls':
      return joinWalls(job, edit.wall);
    case 'move partition':
      return found(movePartition(job, edit.wall, edit.from, edit.to), edit.wall);
    case 'add record':
      return addRecord(job, edit.list, edit.record, edit.before);
    case 'remove record':
      return removeRecord(forget(withoutName(job, `${edit.list}/${edit.id}`), edit.list, edit.id), edit.list, edit.id);
    case 'move panel':
      return onOption(job, edit.option, (o) => ({ ...o, enclosure: { ...o.enclosure, on: edit.on } }));
    case 'move corner':
      return found(moveCorner(job, edit.wall, edit.to), edit.wall);
    case 'move wall':
      return found(moveWall(job, edit.wall, edit.by), edit.wall);
    case 'add option':
      return ok({ ...job, options: [...job.options, edit.option] });
    case 'copy option': {
      const option = job.options.find((o) => o.id === edit.option);
      if (!option) return missing('option', edit.option, ['options']);
      const copy = { ...option, id: edit.id, title: edit.title, enclosure: { ...option.enclosure, id: edit.panel } };
      return ok({ ...job, options: [...job.options, copy] });
    }
    case 'rename':
      if (edit.option === null) return ok({ ...job, title: edit.title });
      return onOption(job, edit.option, (o) => ({ ...o, title: edit.title }));
    case 'answer question':
      return answerQuestion(job, edit);
  }
};

const recordAt = (job: Job, { list, id }: Named): number | undefined => {
  const records = valueAt(job, fromPointer(list) ?? []);
  const at = Array.isArray(records) ? records.findIndex((r) => stepInto(r, 'id') === id) : -1;
  return at < 0 ? undefined : at;
};
const noRecord = ({ list, id }: Named): Result<never, Fault> =>
  err({ error: { type: 'no-such-place', path: `${list}/${id}`, say: jobWords.noSuchPlace } });

/** What depends on most goes last, so that nothing is named that is gone. */
const removeTogether = (job: Job, of: Named): Result<unknown, Fault> => {
  let now = job;
  for (const { list, id } of [of, ...dependents(job, of)].reverse()) {
    const removed = removeRecord(forget(now, list, id), list, id);
    if (!removed.ok) return removed;
    now = removed.value as Job;
  }
  return ok(now);
};

type Option = Job['options'][number];
const onOption = (job: Job, id: Id, to: (option: Option) => Option): Result<Job, Fault> =>
  job.options.some((o) => o.id === id)
    ? ok({ ...job, options: job.options.map((o) => (o.id === id ? to(o) : o)) })
    : missing('option', id, ['options']);

const found = (job: Job | undefined, wall: Id): Result<Job, Fault> =>
  job ? ok(job) : missing('wall', wall, ['site', 'outline']);
