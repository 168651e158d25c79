import { boxNames } from '../../drawings/newWork';
import { oldCanBecomes } from '../../drawings/oldWork';
import { alongOut } from '../../drawings/unroll';
import type { Leg } from '../../facts/result';
import { faceOf, wallFaces } from '../../job/site';
import { formatFeetInches } from '../../units/length';
import { byId } from '../../units/order';
import type { In, Pt3 } from '../../units/types';
import { drawingWords } from '../../words/en/drawings';
import { layoutWords as say } from '../../words/en/layout';
import { homeRunTag, thingName, wallName } from '../parts/names';
import { type OptionView, useJob } from '../selected';
import css from './layout.module.css';

/** A box this near to a wall is told by its place along it. */
const AT_WALL_IN = 6;

/** Legs of one kind that follow each other, added up. */
const legsOf = (legs: readonly Leg[]): { readonly by: string; readonly length: In }[] => {
  const sums: { by: string; length: In }[] = [];
  for (const { from, to, by } of legs) {
    if (by === 'inside box' || by === 'inside panel') continue;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    const last = sums.at(-1);
    if (last?.by === by) last.length += length;
    else sums.push({ by, length });
  }
  return sums;
};

/** The drawings as a list of sentences, for whoever does not see them. */
export const InWords = ({ selected }: { readonly selected: OptionView }) => {
  const job = useJob();
  const { option, plan } = selected;
  if (!plan) return null;
  const faces = wallFaces(job.site, 'after');
  const names = boxNames(plan);
  const { on } = option.enclosure;
  const tags = (ids: readonly string[]): string => ids.map((id) => homeRunTag(job, id)).join(', ');
  const atWall = ([x, y]: Pt3) => {
    const near = faces
      .map((face) => ({ face, at: alongOut(face, [x, y]) }))
      .filter(({ face, at }) => Math.abs(at[1]) <= AT_WALL_IN && at[0] >= 0 && at[0] <= face.length)
      .sort((a, b) => Math.abs(a.at[1]) - Math.abs(b.at[1]))[0];
    return near && { wall: wallName(near.face), at: formatFeetInches(near.at[0]) };
  };
  return (
    <section className={css.words}>
      <h3>{say.wordsTitle}</h3>
      <ul>
        {faceOf(faces, on) && (
          <li>
            {say.panelSays({
              wall: wallName(on),
              left: formatFeetInches(on.left),
              bottom: formatFeetInches(on.bottom),
            })}
          </li>
        )}
        {byId(job.enclosures).map((e) => (
          <li key={e.id}>
            {say.oldSays({
              panel: thingName(job, e.id),
              becomes: drawingWords.oldPanel[oldCanBecomes(option, plan, e.id)],
            })}
          </li>
        ))}
        {plan.boxes
          .filter((b) => names.has(b.id))
          .map((b) => (
            <li key={b.id}>
              {say.boxSays({
                name: names.get(b.id)!,
                size: b.size,
                wall: atWall(b.at)?.wall ?? '',
                at: atWall(b.at)?.at ?? '',
                height: formatFeetInches(b.at[2]),
                runs: tags(b.homeRuns),
              })}
            </li>
          ))}
        {plan.runs.map((run) => (
          <li key={run.homeRun}>
            {say.runSays({
              run: homeRunTag(job, run.homeRun),
              serves: job.circuits
                .filter((c) => job.homeRuns.find((h) => h.id === run.homeRun)?.circuits.includes(c.id))
                .map((c) => c.label)
                .join(', '),
              way: run.way,
              legs: legsOf(run.legs)
                .map(({ length, by }) => say.legSays({ length: formatFeetInches(length), by }))
                .join(', '),
            })}
          </li>
        ))}
      </ul>
    </section>
  );
};
