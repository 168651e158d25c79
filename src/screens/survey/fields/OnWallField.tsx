import type { OnWall } from '../../../job/schema';
import type { In } from '../../../units/types';
import { surveyWords as say } from '../../../words/en/survey';
import { wallName } from '../../parts/names';
import { useJob } from '../../selected';
import { setField } from '../drag';
import type { Ref } from '../ref';
import { snapLeft } from '../snap';
import { useChange } from '../useChange';
import { useFaces } from '../useFaces';
import { ChoiceField } from './ChoiceField';

const Field = ({ of, on, width }: { readonly of: Ref; readonly on: OnWall; readonly width: In }) => {
  const faces = useFaces();
  const change = useChange();
  return (
    <ChoiceField
      spec={{ label: say.onWall, unknown: false }}
      of={faces.map((f) => ({ value: f.id, say: wallName(f) }))}
      value={`${on.wall}:${on.face}`}
      onSet={(id) => {
        const face = faces.find((f) => f.id === id);
        if (!face) return null;
        const left = snapLeft(on.left, width, face.length);
        return change(setField(of, '/on', { ...on, wall: face.wall, face: face.face, left }));
      }}
    />
  );
};

/** The wall a door or an old panel is in or on; on a shorter wall it comes as far to the left as it must. */
export const OnWallField = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const opening = of.list === '/site/openings' ? job.site.openings.find((o) => o.id === of.id) : undefined;
  const can = of.list === '/enclosures' ? job.enclosures.find((e) => e.id === of.id) : undefined;
  if (opening) return <Field of={of} on={opening.on} width={opening.width} />;
  return can ? <Field of={of} on={can.on} width={can.size.width} /> : null;
};
