import { forget } from '../../../job/forget';
import type { Circuit, Job } from '../../../job/schema';
import { err, ok } from '../../../units/result';
import type { Id } from '../../../units/types';
import { gridWords as say } from '../../../words/en/grid';
import { freeCircuitId } from './blank';
import { type Column, needHomeRun, type Write } from './column';
import { readText } from './read';
import { type RowRef, rowAt } from './rows';

/** Columns that tie a row to others: cable group, cable shared, breaker shared, neutral shared. */

const without = <K extends 'circuits' | 'homeRuns'>(job: Job, list: K, id: Id): Job => {
  const forgotten = forget(job, `/${list}`, id);
  return { ...forgotten, [list]: forgotten[list].filter((r) => r.id !== id) };
};
const cablesOf = (job: Job, circuit: Id | null) =>
  job.homeRuns.filter((h) => circuit !== null && h.circuits.includes(circuit));

/** A circuit nothing is left of after its cable went to another. */
const dropIdle = (job: Job, circuit: Id | null): Job =>
  circuit === null || cablesOf(job, circuit).length > 0 ? job : without(job, 'circuits', circuit);

/** Groups a text may mean: the one of that name, else all whose names begin so. */
const groupNamed = (job: Job, typed: string): Id[] => {
  const said = typed.toLowerCase();
  const names = job.cableGroups.map((g) => g.id);
  const whole = names.filter((id) => id.toLowerCase() === said);
  if (whole.length > 0 || said === '') return whole;
  return names.filter((id) => id.toLowerCase().startsWith(said));
};

export const GROUP: Column = {
  id: 'group',
  of: 'cable',
  pass: 1,
  width: 13,
  show: ({ homeRun }) => homeRun?.group ?? '',
  write: (job, row, text) => {
    const typed = text.trim();
    if (typed === '') return row.homeRun === null ? ok({ job, row }) : err(say.groupStays);
    const groups = job.cableGroups.map((g) => g.id);
    const named = groupNamed(job, typed);
    if (named.length > 1) return err(say.severalGroups({ typed, groups: named }));
    const group = named[0];
    if (group === undefined) return err(say.noSuchGroup({ typed, groups }));
    if (row.homeRun === null) return needHomeRun(job, row, group);
    return ok({
      row,
      job: { ...job, homeRuns: job.homeRuns.map((h) => (h.id === row.homeRun ? { ...h, group } : h)) },
    });
  },
};

const MOST_TAG = 80;
/** This row's circuit onto a cable that is there; its own cable goes where nothing else is on it. */
const ontoCable = (job: Job, row: RowRef, tag: Id): Write => {
  const { homeRun } = row;
  const off = homeRun === null ? job : offCable(job, homeRun, row.circuit);
  return ok({
    row: { ...row, homeRun: tag },
    job: {
      ...off,
      homeRuns: off.homeRuns.map((h) =>
        h.id === tag && row.circuit !== null && !h.circuits.includes(row.circuit)
          ? { ...h, circuits: [...h.circuits, row.circuit] }
          : h,
      ),
    },
  });
};
const offCable = (job: Job, homeRun: Id, circuit: Id | null): Job => {
  const left = job.homeRuns.find((h) => h.id === homeRun)?.circuits.filter((c) => c !== circuit) ?? [];
  if (left.length === 0) return without(job, 'homeRuns', homeRun);
  return { ...job, homeRuns: job.homeRuns.map((h) => (h.id === homeRun ? { ...h, circuits: left } : h)) };
};

export const TAG: Column = {
  id: 'tag',
  of: 'cable',
  pass: 0,
  width: 9,
  show: ({ homeRun }) => homeRun?.id ?? '',
  write: (job, row, text, beside) => {
    const read = readText(text);
    if (!read.ok) return read;
    const tag = read.value;
    if (tag === '') return row.homeRun === null ? ok({ job, row }) : err(say.tagNeeded);
    if (tag.length > MOST_TAG) return err(say.tooLong({ most: MOST_TAG }));
    if (tag === row.homeRun) return ok({ job, row });
    if (job.homeRuns.some((h) => h.id === tag)) return ontoCable(job, row, tag);
    if (row.homeRun !== null) return err(say.tagStays({ typed: tag }));
    const named = groupNamed(job, beside('group')?.trim() ?? '');
    return needHomeRun(job, row, named.length === 1 ? named[0] : undefined, tag);
  },
};

/** The one other circuit of that number; where several have it, the one of the same old panel. */
const circuitNumbered = (job: Job, row: RowRef, typed: string): Circuit | string => {
  const found = job.circuits.filter((c) => c.number === typed && c.id !== row.circuit);
  if (found.length <= 1) return found[0] ?? say.noSuchCircuit({ typed });
  const panelOf = (circuit: Id | null) =>
    cablesOf(job, circuit).map((h) => job.cableGroups.find((g) => g.id === h.group)?.enclosure)[0];
  const near = found.filter((c) => panelOf(c.id) === panelOf(row.circuit));
  return near.length === 1 ? near[0]! : say.severalCircuits({ typed, count: found.length });
};

/** Both circuits of a multiwire pair name each other; whoever either was paired with before is let go. */
const paired = (job: Job, a: Id, b: Id | null): Job => {
  const partnerOf = (id: Id): Id | null => {
    if (id === a) return b;
    return id === b ? a : null;
  };
  const freed = new Set(
    job.circuits.filter((c) => c.partner === a || (b !== null && c.partner === b)).map((c) => c.id),
  );
  return {
    ...job,
    circuits: job.circuits.map((c) =>
      c.id === a || c.id === b || freed.has(c.id) ? { ...c, partner: partnerOf(c.id) } : c,
    ),
  };
};

export const PARTNER: Column = {
  id: 'partner',
  of: 'circuit',
  pass: 5,
  width: 11,
  show: ({ circuit }, job) => {
    const partner = circuit && job.circuits.find((c) => c.id === circuit.partner);
    return partner ? partner.number || partner.label || partner.id : '';
  },
  write: (job, row, text) => {
    const read = readText(text);
    if (!read.ok) return read;
    const typed = read.value;
    const { circuit } = row;
    if (circuit === null) return typed === '' ? ok({ job, row }) : err(say.noCircuit);
    if (typed === '' || typed.toLowerCase() === say.none) return ok({ job: paired(job, circuit, null), row });
    const other = circuitNumbered(job, row, typed);
    return typeof other === 'string' ? err(other) : ok({ job: paired(job, circuit, other.id), row });
  },
};

export const BREAKER: Column = {
  id: 'breaker',
  of: 'circuit',
  pass: 5,
  width: 10,
  show: ({ circuit, homeRun }, job) =>
    circuit
      ? cablesOf(job, circuit.id)
          .filter((h) => h.id !== homeRun?.id)
          .map((h) => h.id)
          .join(', ')
      : '',
  write: (job, row, text) => {
    const read = readText(text);
    if (!read.ok) return read;
    const typed = read.value.split(',')[0]!.trim();
    const { circuit, homeRun } = rowAt(job, row);
    if (typed === '' || typed.toLowerCase() === say.none) return ok(apart(job, row, circuit));
    if (homeRun === null) return err(say.noCable);
    const other = job.homeRuns.find((h) => h.id === typed && h.id !== homeRun.id);
    const target = other?.circuits[0];
    if (target === undefined) return err(say.noOtherCable({ typed }));
    if (other!.circuits.some((c) => c === row.circuit)) return ok({ job, row });
    const circuits = [...homeRun.circuits.filter((c) => c !== row.circuit), target];
    const moved = { ...job, homeRuns: job.homeRuns.map((h) => (h.id === homeRun.id ? { ...h, circuits } : h)) };
    return ok({ job: dropIdle(moved, row.circuit), row: { ...row, circuit: target } });
  },
};

/** A cable that shared a breaker gets a circuit of its own, the same in all but its number. */
const apart = (job: Job, row: RowRef, circuit: Circuit | null): { job: Job; row: RowRef } => {
  if (circuit === null || row.homeRun === null || cablesOf(job, circuit.id).length < 2) return { job, row };
  const own: Circuit = { ...circuit, id: freeCircuitId(job), number: '', partner: null };
  return {
    row: { ...row, circuit: own.id },
    job: {
      ...job,
      circuits: [...job.circuits, own],
      homeRuns: job.homeRuns.map((h) =>
        h.id === row.homeRun ? { ...h, circuits: h.circuits.map((c) => (c === circuit.id ? own.id : c)) } : h,
      ),
    },
  };
};

/** A row gone: its circuit where no other cable has it, its cable where no other circuit is on it. */
export const removeRow = (job: Job, row: RowRef): Job => {
  const off = row.homeRun === null ? job : offCable(job, row.homeRun, row.circuit);
  return dropIdle(off, row.circuit);
};
