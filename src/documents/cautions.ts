import { answerOf } from '../job/questions';
import type { Job } from '../job/schema';
import { POWER_SOURCES } from '../standards/editionsService';
import {
  ASBESTOS_BEFORE,
  ENGINEERED,
  LEAD_AREA_FT2,
  LEAD_PAINT_BEFORE,
  SAFETY_SOURCES,
  STOP_AND_ASSESS,
} from '../standards/safety';
import { cited, type Source } from '../standards/source';
import { isKnown } from '../units/types';
import { cautionWords as say } from '../words/en/cautions';

/** Where a caution matters: at the survey, when findings are weighed, to the crew, to the owner. */
export type CautionPlace = 'survey' | 'check' | 'crew' | 'owner';

export interface Caution {
  readonly id: keyof typeof CAUTION_PLACES;
  readonly say: string;
  readonly source: Source;
  /** The source as it is printed. */
  readonly cited: string;
}

const CAUTION_PLACES = {
  permit: ['check', 'owner'],
  coverOff: ['survey'],
  dead: ['crew'],
  line: ['survey', 'crew'],
  backfeed: ['survey', 'crew'],
  oldCable: ['survey', 'check', 'crew'],
  engineered: ['survey', 'crew'],
  lead: ['check', 'crew', 'owner'],
  asbestos: ['survey', 'crew', 'owner'],
  sump: ['survey', 'crew'],
  alarms: ['check', 'owner'],
} as const satisfies Record<string, readonly CautionPlace[]>;

type Draft = readonly [id: Caution['id'], say: string | null, source: Source];

const unique = (texts: readonly string[]): string[] => [...new Set(texts)].sort();

const line = ({ enclosures }: Job): string | null =>
  enclosures.some((e) => e.role === 'service')
    ? say.lineLive
    : enclosures.some((e) => !isKnown(e.role))
      ? say.lineMayBeLive
      : null;

const backfeed = ({ enclosures, house }: Job): string | null => {
  const kinds = unique(
    enclosures.flatMap((e) => e.attached.map((a) => a.kind)).filter((k) => POWER_SOURCES.includes(k)),
  );
  if (kinds.length > 0) return say.backfeed({ kinds: kinds.join(', ') });
  return isKnown(house.otherSource)
    ? house.otherSource
      ? say.backfeed({ kinds: say.anotherSource })
      : null
    : say.backfeedUnknown;
};

const oldCable = ({ homeRuns, circuits }: Job): string | null => {
  const cables = unique([
    ...homeRuns.flatMap((h) =>
      h.condition.filter((c) => STOP_AND_ASSESS.includes(c)).map((condition) => say.condition({ condition })),
    ),
    ...(homeRuns.some((h) => h.cable.kind === 'knob-and-tube') ? [say.knobTube] : []),
    ...(circuits.some((c) => c.flags.includes('aluminum')) ? [say.aluminum] : []),
  ]);
  return cables.length > 0 ? say.oldCable({ cables: cables.join(', ') }) : null;
};

const engineered = ({ site }: Job): string | null => {
  const kinds = unique(site.framing.map((f) => f.kind).filter((k) => ENGINEERED.includes(k)));
  if (kinds.length > 0) return say.engineered({ kinds: kinds.join(', ') });
  return site.framing.some((f) => !isKnown(f.kind)) ? say.unknownJoists : null;
};

const alarms = (job: Job): string | null => {
  const answer = answerOf(job, 'smokeAlarms');
  if (answer?.answer === 'no') return null;
  if (!answer) return say.alarmsAsk;
  return answer.by === null ? say.alarmsUnnamed : say.alarms({ by: answer.by, on: answer.on ?? '' });
};

/** What this job is to be careful about at one place, in the order of danger. What is not known is not taken as safe. */
export const cautionsAt = (job: Job, place: CautionPlace): Caution[] => {
  const { yearBuilt } = job.house;
  const year = isKnown(yearBuilt) ? yearBuilt : null;
  const old = (before: number): boolean => year === null || year < before;
  const drafts: readonly Draft[] = [
    ['permit', say.permit, SAFETY_SOURCES.practice],
    ['coverOff', say.coverOff, SAFETY_SOURCES.arcFlash],
    ['dead', say.dead, SAFETY_SOURCES.dead],
    ['line', line(job), SAFETY_SOURCES.dead],
    ['backfeed', backfeed(job), SAFETY_SOURCES.dead],
    ['oldCable', oldCable(job), SAFETY_SOURCES.practice],
    ['engineered', engineered(job), SAFETY_SOURCES.engineered],
    [
      'lead',
      old(LEAD_PAINT_BEFORE) ? say.lead({ year, before: LEAD_PAINT_BEFORE, area: LEAD_AREA_FT2 }) : null,
      SAFETY_SOURCES.lead,
    ],
    ['asbestos', old(ASBESTOS_BEFORE) ? say.asbestos({ year }) : null, SAFETY_SOURCES.asbestos],
    ['sump', job.site.obstacles.some((o) => o.kind === 'sump') ? say.sump : null, SAFETY_SOURCES.practice],
    ['alarms', alarms(job), SAFETY_SOURCES.alarms],
  ];
  return drafts.flatMap(([id, text, source]) => {
    const places: readonly CautionPlace[] = CAUTION_PLACES[id];
    return text !== null && places.includes(place)
      ? [{ id, say: text, source, cited: source.standing === 'memory' ? say.practice : cited(source) }]
      : [];
  });
};
