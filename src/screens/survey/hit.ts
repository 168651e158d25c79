import { canOutline } from '../../drawings/oldWork';
import { partitionQuad, wallQuads } from '../../drawings/walls';
import { insideOrOn, pointToSegment } from '../../geometry/polygon';
import type { Job } from '../../job/schema';
import { boxOutline } from '../../job/site';
import type { In, Pt } from '../../units/types';
import { openingQuad } from './outlines';
import { part, type Ref } from './ref';

const nearCourse = (p: Pt, points: readonly (readonly number[])[], within: In): boolean =>
  points.slice(1).some((b, i) => pointToSegment(p, [points[i]![0]!, points[i]![1]!], [b[0]!, b[1]!]) <= within);
const near = (p: Pt, outline: readonly Pt[] | null, within: In): boolean =>
  outline !== null && (insideOrOn(p, outline) || nearCourse(p, [...outline, outline[0]!], within));
const plan = (box: readonly Pt[]): number =>
  Math.abs(box.reduce((n, [x, y], i) => n + x * box[(i + 1) % box.length]![1] - box[(i + 1) % box.length]![0] * y, 0));

/** Everything under a point of the plan, what lies on top first: small before large, hung before standing, areas last. */
export const hitsAt = (job: Job, p: Pt, within: In): Ref[] => {
  const { site } = job;
  const of = (list: string, records: readonly { readonly id: string }[]): Ref[] =>
    records.map(({ id }) => ({ list, id }));
  const boxes = site.obstacles
    .map((o) => ({ id: o.id, outline: boxOutline(o.corner, o.size.width, o.size.depth, o.turn) }))
    .filter(({ outline }) => near(p, outline, within / 2))
    .sort((a, b) => plan(a.outline) - plan(b.outline));
  return [
    ...of(
      '/enclosures',
      job.enclosures.filter((e) => near(p, canOutline(job, e), within)),
    ),
    ...of(
      '/site/openings',
      site.openings.filter((o) => near(p, openingQuad(site, o), within)),
    ),
    ...of(
      '/cableGroups',
      job.cableGroups.filter((g) => nearCourse(p, g.path, within)),
    ),
    ...of(
      '/site/sleeves',
      site.sleeves.filter((s) => nearCourse(p, [s.from, s.to], within)),
    ),
    ...(nearCourse(p, job.feeder.path, within) ? [part('/feeder')] : []),
    ...of('/site/obstacles', boxes),
    ...of(
      '/site/partitions',
      site.partitions.filter((w) => near(p, partitionQuad(w), within)),
    ),
    ...of(
      '/site/outline',
      wallQuads(site).filter(({ quad }) => near(p, quad, within / 2)),
    ),
    ...of(
      '/site/bays',
      site.bays.filter((b) => insideOrOn(p, b.outline)),
    ),
    ...of(
      '/site/framing',
      site.framing.filter((f) => f.outline !== null && nearCourse(p, [...f.outline, f.outline[0]!], within)),
    ),
    ...of(
      '/site/areas',
      site.areas.filter((a) => insideOrOn(p, a.outline)),
    ),
  ];
};
