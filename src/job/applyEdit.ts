import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import type { Id } from '../units/types';
import { jobWords } from '../words/en/job';
import { addRecord, removeRecord, setValue } from './change';
import type { Edit } from './edit';
import { forget } from './forget';
import { moveCorner, moveWall } from './moveWalls';
import { checkJob } from './parse';
import { faultAt, type Path } from './pointer';
import type { Job } from './schema';
import { share } from './share';

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
      return setValue(job, edit.path, edit.value);
    case 'add record':
      return addRecord(job, edit.list, edit.record, edit.before);
    case 'remove record':
      return removeRecord(forget(job, edit.list, edit.id), edit.list, edit.id);
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
  }
};

type Option = Job['options'][number];
const onOption = (job: Job, id: Id, to: (option: Option) => Option): Result<Job, Fault> =>
  job.options.some((o) => o.id === id)
    ? ok({ ...job, options: job.options.map((o) => (o.id === id ? to(o) : o)) })
    : missing('option', id, ['options']);

const found = (job: Job | undefined, wall: Id): Result<Job, Fault> =>
  job ? ok(job) : missing('wall', wall, ['site', 'outline']);
