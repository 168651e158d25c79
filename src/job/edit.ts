import type { Id, Pt } from '../units/types';
import { jobWords } from '../words/en/job';
import { fromPointer } from './pointer';
import type { OnWall, Option } from './schema';

/** A change to a job as plain data, replayable; ids are made by the caller. `path` and `list` are JSON pointers into the job. */
export type Edit =
  | { readonly edit: 'set value'; readonly path: string; readonly value: unknown }
  /** Before the record with that id, or at the end of the list. */
  | { readonly edit: 'add record'; readonly list: string; readonly record: unknown; readonly before: Id | null }
  /** Of a list, or a key of an open record such as /code/amendments. What only named it forgets it. */
  | { readonly edit: 'remove record'; readonly list: string; readonly id: Id }
  | { readonly edit: 'move panel'; readonly option: Id; readonly on: OnWall }
  /** A corner of the room, by the id of the wall that starts there. */
  | { readonly edit: 'move corner'; readonly wall: Id; readonly to: Pt }
  /** A wall of the room or a partition, both ends alike. */
  | { readonly edit: 'move wall'; readonly wall: Id; readonly by: Pt }
  | { readonly edit: 'add option'; readonly option: Option }
  /** A second answer to start from: the same option under another id, its panel too. */
  | { readonly edit: 'copy option'; readonly option: Id; readonly id: Id; readonly panel: Id; readonly title: string }
  /** An option's title, or the job's where `option` is null. */
  | { readonly edit: 'rename'; readonly option: Id | null; readonly title: string };

const lastStep = (pointer: string): string => fromPointer(pointer)?.at(-1) ?? pointer;

/** The edit as the undo list shows it. */
export const editName = (edit: Edit): string => {
  const words = jobWords.edits;
  switch (edit.edit) {
    case 'set value':
      return words.setValue({ key: lastStep(edit.path) });
    case 'add record':
      return words.addRecord({ list: lastStep(edit.list) });
    case 'remove record':
      return words.removeRecord({ list: lastStep(edit.list), id: edit.id });
    case 'move panel':
      return words.movePanel({ option: edit.option });
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
  }
};
