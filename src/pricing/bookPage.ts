import type { PriceBook } from '../job/schema';
import { compareText } from '../units/order';
import { pricingWords as words } from '../words/en/pricing';
import { assemblyOf, FAMILIES, FIXED_ITEMS, type Part } from './items';
import { MATERIAL_HIGH, MATERIAL_LOW, SURVEY_WIDENS } from './lines';
import { GROUPS } from './range';

/** Every item the book's entries make possible: the fixed ones, and each family with the kinds the book has. Coils are bought, not done. */
export const itemsOf = (book: PriceBook): string[] => {
  const ids = book.materials.map((entry) => entry.id).filter((id) => !id.includes('@'));
  const kinds = Object.keys(FAMILIES).flatMap((family) => {
    const from = family === 'feeder breaker' ? 'breaker:' : `${family}:`;
    return ids.filter((id) => id.startsWith(from)).map((id) => `${family}:${id.slice(from.length)}`);
  });
  return [...FIXED_ITEMS, ...kinds.sort(compareText)].filter((item) => assemblyOf(item) !== null);
};

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');
const code = (text: string): string => `\`${text}\``;
const parts = (list: readonly Part[]): string =>
  list.map(({ id, quantity }) => `${quantity === 1 ? '' : `${quantity} × `}${code(id)}`).join(', ');

const itemRow = (item: string): string[] => {
  const { unit, say, when, materials, tasks, allowance } = assemblyOf(item)!;
  return [
    code(item),
    unit,
    say,
    parts(materials),
    allowance ? `${allowance.kind} ${code(allowance.id)}` : parts(tasks),
    when,
  ];
};
const familyOf = (item: string): string | undefined =>
  Object.keys(FAMILIES).find((name) => item.startsWith(`${name}:`));

/** docs/price-book.md, whole: generated, so that the page and the code cannot differ. */
export const priceBookPage = (book: PriceBook): string => {
  const items = itemsOf(book);
  const fixed = items.filter((item) => FIXED_ITEMS.includes(item));
  const families = Object.keys(FAMILIES).map((name) => {
    const kinds = items.filter((item) => !fixed.includes(item) && familyOf(item) === name);
    const first = kinds[0];
    return first === undefined
      ? `**${code(`${name}:`)}**`
      : `**${code(`${name}:`)}** (${assemblyOf(first)!.unit}, ${assemblyOf(first)!.when}): ${assemblyOf(first)!.say}. ${kinds.map((item) => code(item.slice(name.length + 1))).join(' · ')}`;
  });
  const { profit, tax } = book;
  return `${[
    `# ${words.bookTitle}`,
    words.bookIntro,
    words.bookRates({
      rate: book.dollarsPerCrewHour.toFixed(2),
      overhead: percent(book.overheadRate),
      profit: percent(profit.rate),
      profitAs: profit.as,
      tax: percent(tax.rate),
      taxed: tax.on.join(', '),
    }),
    words.bookRest({ least: String(book.minimumDollars), step: book.roundToDollars }),
    words.bookSpread({
      low: percent(MATERIAL_LOW),
      high: percent(MATERIAL_HIGH),
      walk: String(SURVEY_WIDENS['walk-through']),
      labor: String(GROUPS.labor),
      metal: String(GROUPS.copper),
      parts: String(GROUPS.parts),
    }),
    `## ${words.bookItems}`,
    table(['item', 'unit', 'what is done', 'materials', 'tasks', 'when'], fixed.map(itemRow)),
    words.bookMove,
    `## ${words.bookKinds}`,
    ...families,
    `## ${words.bookTasks}`,
    table(
      ['task', 'unit', 'low', 'likely', 'high', 'source'],
      book.tasks.map((task) => [
        code(task.id),
        task.unit,
        String(task.low),
        String(task.likely),
        String(task.high),
        task.source,
      ]),
    ),
    `## ${words.bookAllowances}`,
    table(
      ['id', 'low $', 'likely $', 'high $'],
      book.allowances.map(({ id, low, likely, high }) => [code(id), String(low), String(likely), String(high)]),
    ),
    `## ${words.bookLead}`,
    table(
      ['material', 'working days'],
      book.lead.map(({ id, days }) => [code(id), String(days)]),
    ),
    `## ${words.bookMaterials}`,
    words.bookCoils,
    table(
      ['id', 'unit', '$', 'source'],
      book.materials.map((entry) => [code(entry.id), entry.unit, String(entry.dollars), entry.source]),
    ),
  ].join('\n\n')}\n`;
};
