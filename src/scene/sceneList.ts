import { boxNames, newTrunks } from '../drawings/newWork';
import { oldCanBecomes } from '../drawings/oldWork';
import { solidJoists } from '../drawings/solidJoists';
import { intrusions } from '../drawings/solidSpaces';
import { stands } from '../drawings/things';
import type { Plan } from '../facts/result';
import type { Enclosure, Job, Option } from '../job/schema';
import { formatFeetInches as length } from '../units/length';
import { byId } from '../units/order';
import type { Id } from '../units/types';
import { sceneWords } from '../words/en/scene';

const say = sceneWords.list;
const hung = ({ id, on }: Enclosure) => ({
  name: id,
  wall: on.wall,
  left: length(on.left),
  bottom: length(on.bottom),
});

/** A sentence about one thing, with the id it has in job or plan. */
export interface Said {
  readonly id: Id;
  readonly say: string;
}
const said = (id: Id, sentence: string): Said => ({ id, say: sentence });

/** What the picture shows, in sentences, for those who cannot see it. */
export const sceneList = (job: Job, option: Option, plan: Plan | null): readonly Said[] => {
  const names = plan ? boxNames(plan) : new Map<string, string>();
  const standing = stands(job.site, option.moves);
  const moved = plan ? plan.runs.filter((r) => newTrunks({ ...plan, runs: [r] }).length > 0).length : 0;
  return [
    said(option.enclosure.id, say.newPanel(hung(option.enclosure))),
    ...byId(job.enclosures).map((e) =>
      said(e.id, say.oldPanel({ ...hung(e), becomes: say.becomes[oldCanBecomes(option, plan, e.id)] })),
    ),
    ...(plan?.boxes ?? []).flatMap((b) => {
      const name = names.get(b.id);
      if (name === undefined) return [];
      const [x, y, z] = b.at;
      return [said(b.id, say.box({ name, size: b.size, x: length(x), y: length(y), z: length(z) }))];
    }),
    ...(moved > 0 ? [said('home runs', say.cables({ count: moved }))] : []),
    ...(plan?.rows ?? []).map((r) => said(r.id, say.row({ count: r.homeRuns.length, length: length(r.length) }))),
    ...standing.map(({ obstacle: o }) =>
      said(o.id, say.thing({ kind: o.kind, id: o.id, low: length(o.bottom), high: length(o.bottom + o.size.height) })),
    ),
    ...(standing.some(({ obstacle }) => obstacle.kind === 'stair') ? [said('which end is up', say.stair)] : []),
    ...(plan
      ? intrusions(job, option, plan).map((i) => said(`in the way: ${i.thing}`, say.inTheWay({ thing: i.thing })))
      : []),
    said('joists', solidJoists(job.site).length > 0 ? say.joists : say.noJoists),
  ];
};
