import type { Grade } from '../facts/result';
import type { BoxKind, RoutingAsk } from '../facts/routing';
import type { LoadFacts } from '../facts/ruling';
import type { UnitMills } from '../facts/work';
import type { Job, Option, PriceBook } from '../job/schema';
import { replacementCable } from '../loads/feederPlan';
import { panelLoad } from '../loads/panelLoad';
import { unitMills } from '../pricing/assemblies';
import { defaultBook } from '../pricing/defaultBook';
import { afciDemands } from '../rules/afci';
import { boxCatalogue } from '../standards/boxCatalogue';
import type { Cable } from '../standards/cable';
import { afciPenalties } from './penalties';

/** What one option is planned with: the book, unit prices, the load, and the question put to routing. */
export interface Stage {
  readonly job: Job;
  readonly option: Option;
  readonly book: PriceBook;
  readonly unit: UnitMills;
  readonly load: LoadFacts;
  readonly newFeeder: Cable;
  readonly ask: RoutingAsk;
}

export const bookOf = (job: Job): PriceBook => (job.priceBook === 'default' ? defaultBook : job.priceBook);

/** Boxes of the catalogue that the contractor's book has a price for. */
const pricedBoxes = (unit: UnitMills): BoxKind[] => boxCatalogue.filter((box) => unit(`box:${box.size}`) !== undefined);

export const stageOf = (job: Job, option: Option, grade: Grade): Stage => {
  const book = bookOf(job);
  const unit = unitMills(book, job.practice);
  const load = panelLoad(job);
  const newFeeder = replacementCable(job, option, load);
  const penalties = afciPenalties(job, afciDemands(job, option), unit);
  return {
    job,
    option,
    book,
    unit,
    load,
    newFeeder,
    ask: { job, option, unit, boxes: pricedBoxes(unit), penalties, feederCable: newFeeder, grade },
  };
};
