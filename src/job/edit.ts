import { isQuestion } from '../standards/questions';
import type { Id, In, Pt } from '../units/types';
import { jobWords } from '../words/en/job';
import { questionWords } from '../words/en/questions';
import { fromPointer, stepInto } from './pointer';
import type { Answering } from './questions';
import type { Job, OnWall, Option } from './schema';

/** A change to a job as plain data, replayable; ids are made by the caller. `path` and `list` are JSON pointers into the job. */
export type Edit =
  | { readonly edit: 'set value'; readonly path: string; readonly value: unknown }
  /** `field` is a JSON pointer inside the record with that id. */
  | {
      readonly edit: 'set field';
      readonly list: string;
      readonly id: Id;
      readonly field: string;
      readonly value: unknown;
    }
  /** Under another id, and all that names it along with it. */
  | { readonly edit: 'rename record'; readonly list: string; readonly id: Id; readonly to: Id }
  /** Several places at once, in order, as one step under its own name: what a pasted block changes. */
  | {
      readonly edit: 'set values';
      readonly name: string;
      readonly values: readonly { readonly path: string; readonly value: unknown }[];
    }
  /** Before the record with that id, or at the end of the list. */
  | { readonly edit: 'add record'; readonly list: string; readonly record: unknown; readonly before: Id | null }
  /** Of a list, or a key of an open record such as /code/amendments. What only named it forgets it. */
  | { readonly edit: 'remove record'; readonly list: string; readonly id: Id }
  /** With everything that cannot do without it. */
  | { readonly edit: 'remove together'; readonly list: string; readonly id: Id }
  /** The corners of the room clockwise, each with the id of the wall that starts there; a wall that keeps its id stays built as it is. */
  | { readonly edit: 'draw room'; readonly walls: readonly { readonly id: Id; readonly at: Pt }[] }
  /** Its far end moves along it, and the wall of the room that follows moves as a whole, so that right angles stay. */
  | { readonly edit: 'wall length'; readonly wall: Id; readonly length: In }
  /** `at` inches from its start; the part beyond gets the new id. */
  | { readonly edit: 'split wall'; readonly wall: Id; readonly at: In; readonly id: Id }
  /** A wall of the room and the one after it, where they run straight into each other. */
  | { readonly edit: 'join walls'; readonly wall: Id }
  | { readonly edit: 'move partition'; readonly wall: Id; readonly from: Pt; readonly to: Pt }
  | { readonly edit: 'move panel'; readonly option: Id; readonly on: OnWall }
  /** A corner of the room, by the id of the wall that starts there. */
  | { readonly edit: 'move corner'; readonly wall: Id; readonly to: Pt }
  /** A wall of the room or a partition, both ends alike. */
  | { readonly edit: 'move wall'; readonly wall: Id; readonly by: Pt }
  | { readonly edit: 'add option'; readonly option: Option }
  /** A second answer to start from: the same option under another id, its panel too. */
  | { readonly edit: 'copy option'; readonly option: Id; readonly id: Id; readonly panel: Id; readonly title: string }
  /** What the inspector said to one question of the sheet, with who and when; null takes the answer back. */
  | ({ readonly edit: 'answer question' } & Answering)
  /** An option's title, or the job's where `option` is null. */
  | { readonly edit: 'rename'; readonly option: Id | null; readonly title: string };

const idOf = (record: unknown): string | null => {
  const id = stepInto(record, 'id');
  return typeof id === 'string' ? id : null;
};
/** The last key of a place that is a word, as a person says it. */
const keyName = (pointer: string): string =>
  jobWords.keyName((fromPointer(pointer) ?? [pointer]).filter((step) => !/^\d+$/.test(step)).at(-1) ?? pointer);

/** The edit as the undo list shows it; with the job it is made in, options are named by their title. */
export const editName = (edit: Edit, job?: Pick<Job, 'options'>): string => {
  const words = jobWords.edits;
  switch (edit.edit) {
    case 'set value':
      return words.setValue({ key: keyName(edit.path) });
    case 'set values':
      return edit.name;
    case 'set field':
      return words.setField({ field: keyName(edit.field), id: edit.id });
    case 'rename record':
      return words.rename({ title: edit.to });
    case 'remove together':
      return words.removeTogether({ id: edit.id });
    case 'draw room':
      return words.drawRoom;
    case 'wall length':
      return words.wallLength({ wall: edit.wall });
    case 'split wall':
      return words.splitWall({ wall: edit.wall });
    case 'join walls':
      return words.joinWalls({ wall: edit.wall });
    case 'move partition':
      return words.moveWall({ wall: edit.wall });
    case 'add record':
      return words.addRecord({ list: keyName(edit.list), id: idOf(edit.record) });
    case 'remove record':
      return words.removeRecord({ list: keyName(edit.list), id: edit.id });
    case 'move panel':
      return words.movePanel({ option: job?.options.find((o) => o.id === edit.option)?.title || edit.option });
    case 'move corner':
      return words.moveCorner({ wall: edit.wall });
    case 'move wall':
      return words.moveWall({ wall: edit.wall });
    case 'add option':
      return words.addOption({ title: edit.option.title });
    case 'copy option':
      return words.copyOption({ title: edit.title });
    case 'rename':
      return words.rename({ title: edit.title });
    case 'answer question': {
      const name = isQuestion(edit.question) ? questionWords.of[edit.question].name : edit.question;
      return edit.answer === null ? questionWords.undoTakeBack({ name }) : questionWords.undo({ name });
    }
  }
};
