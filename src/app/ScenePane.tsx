import { lazy, Suspense, useState } from 'react';
import type { SceneProps } from '../screens/host';
import { MarkAt } from '../screens/parts/EffectMark';
import { useActions, useHost, useJobState } from '../screens/session';
import type { Id } from '../units/types';
import { sceneWords as say } from '../words/en/scene';

/** Its own part of the build: three.js is fetched when the 3-D view is first shown. */
const SceneView = lazy(() => import('../scene/SceneView').then((m) => ({ default: m.SceneView })));

const asked = new URLSearchParams(location.search);
const coarse = asked.get('quality') === 'low';
const exposed = asked.has('test');

/** The 3-D view on the open job: a home run is singled out for all drawings, anything else for this one. */
export const ScenePane = ({ job, option, plan, homeRun, map }: SceneProps) => {
  const { singleOut } = useActions();
  const note = useJobState((s) => s.note);
  const { look } = useHost();
  const [own, setOwn] = useState<Id | null>(null);
  return (
    <Suspense fallback={<p role="status">{say.coming}</p>}>
      <SceneView
        job={job}
        option={option}
        plan={plan}
        map={map}
        selected={homeRun ?? own}
        onSelect={(picked) => {
          const run = picked?.kind === 'home run' ? picked.id : null;
          singleOut({ homeRun: run === homeRun ? null : run });
          setOwn(run === null ? (picked?.id ?? null) : null);
        }}
        note={note}
        number={3}
        hand={look().hand}
        coarse={coarse}
        exposed={exposed}
        paintMark={(effect, n) => <MarkAt effect={effect} number={n} />}
      />
    </Suspense>
  );
};
