import { describe, expect, test } from 'vitest';
import { type CautionPlace, cautionsAt } from '../../../src/documents/cautions';
import type { Job } from '../../../src/job/schema';
import { baseJob, type Changes, changed } from '../rules/support';

const ids = (changes: Changes, place: CautionPlace): string[] =>
  cautionsAt(changed(baseJob, changes) as Job, place).map((c) => c.id);
const says = (changes: Changes, place: CautionPlace, id: string): string | undefined =>
  cautionsAt(changed(baseJob, changes) as Job, place).find((c) => c.id === id)?.say;

describe('cautions stand where they matter', () => {
  // 40 CFR 745, subpart E: target housing is that built before 1978
  test('lead: a house of 1977, or of nobody knows when; not one of 1978', () => {
    expect(ids({ '/house/yearBuilt': 1977 }, 'owner')).toContain('lead');
    expect(ids({ '/house/yearBuilt': 1978 }, 'owner')).not.toContain('lead');
    expect(says({ '/house/yearBuilt': 'unknown' }, 'crew', 'lead')).toContain('Year built not known');
  });
  test('asbestos: from memory, and printed so', () => {
    const [caution] = cautionsAt(changed(baseJob, { '/house/yearBuilt': 1960 }), 'survey').filter(
      (c) => c.id === 'asbestos',
    );
    expect(caution?.source.standing).toBe('memory');
    expect(ids({ '/house/yearBuilt': 1995 }, 'survey')).not.toContain('asbestos');
  });
  test('line side: said of service equipment, said doubtfully where nobody knows, not of a subpanel', () => {
    expect(says({ '/enclosures/0/role': 'service' }, 'crew', 'line')).toContain('until the utility opens the service');
    expect(says({ '/enclosures/0/role': 'unknown' }, 'crew', 'line')).toContain('not known');
    expect(ids({}, 'crew')).not.toContain('line');
  });
  test('backfeed: what is hung on the panel, another source, or nobody knows', () => {
    expect(says({ '/enclosures/0/attached/-': { kind: 'solar', answer: 'unknown' } }, 'crew', 'backfeed')).toContain(
      'solar',
    );
    expect(says({ '/house/otherSource': true }, 'crew', 'backfeed')).toContain('another source');
    expect(says({ '/house/otherSource': 'unknown' }, 'crew', 'backfeed')).toContain('not known');
    expect(ids({}, 'crew')).not.toContain('backfeed');
  });
  test('old cable and engineered joists are named, unknown joists are not taken as sawn', () => {
    expect(says({ '/homeRuns/0/condition': ['cloth'] }, 'crew', 'oldCable')).toContain('cloth cable');
    expect(says({ '/circuits/0/flags': ['aluminum'] }, 'survey', 'oldCable')).toContain('aluminum');
    expect(says({ '/site/framing/0/kind': 'I-joist' }, 'crew', 'engineered')).toContain('I-joist');
    expect(says({ '/site/framing/0/kind': 'unknown' }, 'crew', 'engineered')).toContain('not known');
    expect(ids({}, 'crew')).toEqual(['dead']);
  });
  test('alarms: asked until the inspector answers, then said with who and when, or no more', () => {
    expect(says({}, 'owner', 'alarms')).toContain('Ask whether');
    const answered = (answer: string) => ({
      '/code/amendments/smokeAlarms': answer,
      '/code/saidBy/smokeAlarms': { by: 'R. Tester', on: '2026-03-02', note: '' },
    });
    expect(says(answered('yes'), 'owner', 'alarms')).toContain('(R. Tester, 2026-03-02)');
    expect(ids(answered('no'), 'owner')).not.toContain('alarms');
  });
  test('each stands where it is of use: cover off at the survey, dead work with the crew, the permit with the owner', () => {
    expect(ids({}, 'survey')).toContain('coverOff');
    expect(ids({}, 'crew')).not.toContain('coverOff');
    expect(ids({}, 'owner')).toEqual(['permit', 'alarms']);
  });
});
