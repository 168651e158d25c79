import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { priceBookSchema } from '../../../src/job/schema';
import { unitMills } from '../../../src/pricing/assemblies';
import { itemsOf, priceBookPage } from '../../../src/pricing/bookPage';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { assemblyOf, FAMILIES } from '../../../src/pricing/items';
import { boxCatalogue } from '../../../src/standards/boxCatalogue';
import { CONNECTOR_RANGE } from '../../../src/standards/connectors';
import { APPLIANCE_RECEPTACLES } from '../../../src/standards/editionsCircuits';

const ids = (list: readonly { readonly id: string }[]) => list.map((entry) => entry.id);

describe('the default price book', () => {
  test('is a valid price book with every id once', () => {
    expect(priceBookSchema.safeParse(defaultBook).success).toBe(true);
    for (const list of [defaultBook.materials, defaultBook.tasks, defaultBook.allowances])
      expect(new Set(ids(list)).size).toBe(list.length);
  });

  test('prices every item it makes possible, and each entry is used by an item', () => {
    const unit = unitMills(defaultBook);
    const items = itemsOf(defaultBook);
    expect(items.filter((item) => !(unit(item)! > 0))).toEqual([]);
    const parts = items.map((item) => assemblyOf(item)!);
    const used = {
      materials: new Set(parts.flatMap((part) => ids(part.materials))),
      tasks: new Set(parts.flatMap((part) => ids(part.tasks))),
      allowances: new Set(parts.flatMap((part) => part.allowance?.id ?? [])),
    };
    // A coil (cable:…@250) is bought, not done: it belongs to the cable of its name.
    const bought = ids(defaultBook.materials).filter((id) => !used.materials.has(id));
    expect(bought.filter((id) => !/^cable:.+@\d+$/.test(id) || !used.materials.has(id.split('@')[0]!))).toEqual([]);
    expect(ids(defaultBook.tasks).filter((id) => !used.tasks.has(id))).toEqual([]);
    expect(ids(defaultBook.allowances).filter((id) => !used.allowances.has(id))).toEqual([]);
    for (const name of Object.keys(FAMILIES)) expect(items.some((item) => item.startsWith(`${name}:`))).toBe(true);
  });

  test('has the ids fixed for files', () => {
    const wanted = [
      ...[
        '12/2 NM',
        '14/2 NM',
        '14/3 NM',
        '12/3 NM',
        '10/2 NM',
        '10/3 NM',
        '8/3 NM',
        '6/3 NM',
        '12/2 AC',
        '12/2 MC',
        '2-2-2-4 Al SER',
        '1-1-1-3 Al SER',
        '1/0-1/0-1/0-2 Al SER',
        '12/2 NM@250',
      ].map((name) => `cable:${name}`),
      ...['panel:20', 'panel:24', 'panel:30', 'panel:40', 'panel:42'],
      ...['1p 20', '1p 20 AFCI', '2p 20 AFCI', '1p 20 AFCI+GFCI', '2p 30 GFCI', '2p 100', '2p 125', '2p 90'].map(
        (name) => `breaker:${name}`,
      ),
      ...['box:4-11/16 x 2-1/8', 'box:12x12x4', 'connector:1/2', 'spd', 'ground bar', 'board', 'staple', 'plate'],
    ];
    expect(wanted.filter((id) => !ids(defaultBook.materials).includes(id))).toEqual([]);
    const tasks =
      'survey,trace,mount panel,strip old panel,reuse,hang box,splice,pull,hole,land 1p,land AFCI,land 2p,feeder,lug,spd,ground bar,electrode,shutdown,test,directory,inspection,load in,patch';
    expect(tasks.split(',').filter((id) => !ids(defaultBook.tasks).includes(id))).toEqual([]);
  });

  test('has what the catalogues of boxes, connectors, receptacles and electrode conductors can ask for', () => {
    const unit = unitMills(defaultBook);
    const items = [
      ...boxCatalogue.map(({ size }) => `box:${size}`),
      ...CONNECTOR_RANGE.map(({ size }) => `connector:${size}`),
      ...APPLIANCE_RECEPTACLES.flatMap(({ receptacle }) => [`receptacle:${receptacle}`, `cord:${receptacle}`]),
      ...['8', '6', '4', '2', '1/0', '2/0', '3/0'].map((size) => `electrode:${size}`),
    ];
    expect(items.filter((item) => unit(item) === undefined)).toEqual([]);
  });

  test('marks every price as invented and every hour as common practice', () => {
    expect(new Set(defaultBook.materials.map((entry) => entry.source))).toEqual(
      new Set(['invented for the default book']),
    );
    expect(defaultBook.tasks.filter((task) => !task.source.includes('no source'))).toEqual([]);
    expect(defaultBook.tasks.filter((t) => !(t.low <= t.likely && t.likely <= t.high))).toEqual([]);
    expect(defaultBook.allowances.filter((a) => !(a.low <= a.likely && a.likely <= a.high))).toEqual([]);
  });

  test('a longer coil costs more in all and less a foot', () => {
    const coils = defaultBook.materials.flatMap(({ id, dollars }) => {
      const found = /^(cable:.+)@(\d+)$/.exec(id);
      return found ? [{ cable: found[1]!, feet: Number(found[2]), dollars }] : [];
    });
    for (const a of coils)
      for (const b of coils)
        if (a.cable === b.cable && a.feet < b.feet) {
          expect(b.dollars).toBeGreaterThan(a.dollars);
          expect(b.dollars / b.feet).toBeLessThan(a.dollars / a.feet);
        }
  });

  test('its page is generated and up to date', () => {
    expect(readFileSync(new URL('../../../docs/price-book.md', import.meta.url), 'utf8')).toBe(
      priceBookPage(defaultBook),
    );
  });
});
