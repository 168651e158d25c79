import type { FeederChoice, FeederPlan, Outcome } from '../facts/result';
import type { FeederLaid, RoutingAnswer } from '../facts/routing';
import { feederOutside } from '../job/feeder';
import type { Job, Option, PriceBook } from '../job/schema';
import { feederOutcome } from '../loads/feederPlan';
import { feederSpliceBox } from '../loads/feederSplice';
import { charged } from '../pricing/charged';
import type { Cable } from '../standards/cable';
import { cableItem, cableName } from '../standards/cableNames';
import { connectorToOrder } from '../standards/connectors';
import { UTILITY } from '../standards/editionsService';
import { PULL_BOX } from '../standards/pullBox';
import { compareSizes, isSize } from '../standards/sizes';
import { formatFeetInches } from '../units/length';
import { type Cents, isKnown } from '../units/types';
import { feederChoiceWords as say } from '../words/en/feederChoices';
import { feederPieces, LUGS_AN_END, type RequiredWork } from './required';
import type { Stage } from './stages';

const piece = (item: string, quantity: number): RequiredWork => ({
  item,
  quantity,
  homeRuns: [],
  rule: null,
  alternate: null,
});

/** Two hots, the neutral and the EGC; `splice large` counts joints by three. */
const JOINTS = 4;
const JOINTS_OF_A_SPLICE = 3;
/** The connectors of `splice large` take conductors up to this. */
const SPLICED_TO = '2';
const BOX_CONNECTORS = 3;

/** Has the book a connector for conductors of its size? */
const isJoined = ({ size }: Cable): boolean => isKnown(size) && isSize(size) && compareSizes(size, SPLICED_TO) <= 0;

/** Work of the old feeder spliced and led on, or null where the book has no connector of its size, or no box does. */
const extensionWork = (cable: Cable, laid: FeederLaid, box: string | null): RequiredWork[] | null => {
  if (box === null || !isJoined(cable)) return null;
  return [
    piece('feeder', 1),
    piece('feeder ft', laid.cutLength / 12),
    piece(cableItem(cable), laid.cutLength / 12),
    piece(`connector:${connectorToOrder(cable)}`, BOX_CONNECTORS),
    piece(`box:${box}`, 1),
    piece('splice large', JOINTS / JOINTS_OF_A_SPLICE),
    ...laid.work,
    piece('lug', LUGS_AN_END),
  ];
};

const feet = (inches: number): string => formatFeetInches(inches);

/**
 * The three things that may become of a feeder, each judged for the breaker in front of it and priced with all that is
 * charged on it. None where there is no feeder: service conductors are the utility's matter.
 */
export const feederChoices = (
  { job, option, load, newFeeder, book }: Pick<Stage, 'job' | 'option' | 'load' | 'newFeeder' | 'book'>,
  feeder: Pick<FeederPlan, 'way' | 'why'>,
  { others }: RoutingAnswer['feeder'],
): FeederChoice[] => {
  const fromDisconnect = option.serviceDisconnect !== null;
  if (!others || (job.feeder.from.panel === UTILITY && !fromDisconnect)) return [];
  const old = job.feeder.cable;
  const ofOld = feederOutcome(job, option, old, job.feeder.raceway, load);
  const ofNew = feederOutcome(job, option, newFeeder, 'none', load);
  const choice = (
    way: FeederChoice['way'],
    outcome: Outcome,
    work: RequiredWork[] | null,
    text: string,
  ): FeederChoice => ({
    way,
    possible: true,
    outcome,
    cents: work && priceOf(job, book, work),
    say: text,
  });
  const barred = (way: FeederChoice['way'], outcome: Outcome, text: string): FeederChoice => ({
    way,
    possible: false,
    outcome,
    cents: null,
    say: text,
  });
  return [
    feeder.way === 'kept'
      ? choice('kept', ofOld, feederPieces({ way: 'kept', cutLength: 0, cable: old }, []), say.kept())
      : barred('kept', ofOld, fromDisconnect ? say.fromDisconnect() : say.notKept()),
    extended(job, option, feeder, others.extended, ofOld, choice, barred),
    replaced(job, option, newFeeder, others.replaced, ofNew, choice, barred),
  ];
};

type Made = (way: FeederChoice['way'], outcome: Outcome, work: RequiredWork[] | null, text: string) => FeederChoice;
type Barred = (way: FeederChoice['way'], outcome: Outcome, text: string) => FeederChoice;

const extended = (
  job: Job,
  option: Option,
  feeder: Pick<FeederPlan, 'way'>,
  laid: FeederLaid | null,
  outcome: Outcome,
  choice: Made,
  barred: Barred,
): FeederChoice => {
  if (option.serviceDisconnect) return barred('extended', outcome, say.fromDisconnect());
  if (feeder.way === 'kept') return barred('extended', outcome, say.noNeed());
  if (!laid) return barred('extended', outcome, say.notExtended());
  const { cable } = job.feeder;
  const box = feederSpliceBox(cable);
  const length = feet(laid.cutLength);
  const minimum = isKnown(cable.size) && isSize(cable.size) && compareSizes(cable.size, PULL_BOX.appliesFromAwg) >= 0;
  const spliced = box === null ? say.extendedNoBox({ feet: length }) : say.extended({ box, feet: length, minimum });
  const text = isJoined(cable) ? spliced : spliced + say.noConnector();
  return choice('extended', outcome, extensionWork(cable, laid, box), text);
};

const replaced = (
  job: Job,
  option: Option,
  cable: Cable,
  laid: FeederLaid | null,
  outcome: Outcome,
  choice: Made,
  barred: Barred,
): FeederChoice => {
  if (!laid || laid.legs.length === 0) return barred('replaced', outcome, say.notReplaced());
  const words = { cable: cableName(cable), feet: feet(laid.cutLength) };
  const measured = isKnown(feederOutside(job, option));
  const work = feederPieces({ way: 'replaced', cutLength: laid.cutLength, cable }, laid.work);
  return choice(
    'replaced',
    outcome,
    measured ? work : null,
    measured ? say.replaced(words) : say.replacedOutside(words),
  );
};

/** Cents with overhead, profit and tax; null where the book lacks a price. */
const priceOf = (job: Job, book: PriceBook, work: readonly RequiredWork[]): Cents | null => {
  const { cents, complete } = charged(work, book, job.practice);
  return complete ? cents : null;
};
