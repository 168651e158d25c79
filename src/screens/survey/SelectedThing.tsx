import { courseLength } from '../../drawings/courses';
import { surveyWords as say } from '../../words/en/survey';
import { lengthText } from '../parts/lengthParts';
import { useJob } from '../selected';
import { courseField, setField } from './drag';
import { FeederExtras } from './FeederExtras';
import { AttachedField } from './fields/AttachedField';
import fields from './fields/fields.module.css';
import { OnWallField } from './fields/OnWallField';
import { PointsField } from './fields/PointsField';
import { StretchesField } from './fields/StretchesField';
import { text } from './fields/spec';
import { TailsField } from './fields/TailsField';
import { TypedField } from './fields/TypedField';
import { misfitOf } from './misfit';
import { kindOf, nameOf } from './nameOf';
import { RemoveThing } from './RemoveThing';
import { fieldValue, part, pointerOf, type Ref, sameRef } from './ref';
import { useSheet } from './sheetState';
import css from './survey.module.css';
import { ThingGroups } from './ThingGroups';
import { useChange } from './useChange';
import { WallExtras } from './WallExtras';

const NAME = text('', say.name);
const DEEP = ['/cableGroups', ''];
const FEWEST: Readonly<Record<string, number>> = { '/cableGroups': 2, '': 0 };

/** Outline or run of a thing, point by point. */
const Course = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const change = useChange();
  const field = courseField(of);
  const points = field === undefined ? null : fieldValue(job, of, field);
  if (field === undefined || !Array.isArray(points)) return null;
  return (
    <>
      <h3 className={fields.head}>{say.points}</h3>
      <PointsField
        points={points as readonly (readonly number[])[]}
        deep={DEEP.includes(of.list)}
        least={FEWEST[of.list] ?? 3}
        onSet={(value) => change(setField(of, field, value))}
      />
    </>
  );
};

const GroupExtras = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const change = useChange();
  const group = job.cableGroups.find((g) => g.id === of.id);
  if (!group) return null;
  const whole = courseLength(group.path);
  return (
    <>
      <p className={css.say}>
        {say.runLength} <b>{lengthText(whole)}</b>
      </p>
      <h3 className={fields.head}>{say.stretchesTitle}</h3>
      <StretchesField
        stretches={group.reachable}
        whole={Math.floor(whole * 64) / 64}
        onSet={(value) => change(setField(of, '/reachable', value))}
      />
      <h3 className={fields.head}>{say.tailsTitle}</h3>
      <TailsField tails={group.tails} onSet={(value) => change(setField(of, '/tails', value))} />
    </>
  );
};

const PanelExtras = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const change = useChange();
  const can = job.enclosures.find((e) => e.id === of.id);
  return (
    can && (
      <>
        <h3 className={fields.head}>{say.attachedTitle}</h3>
        <AttachedField attached={can.attached} onSet={(value) => change(setField(of, '/attached', value))} />
      </>
    )
  );
};

const Misfit = ({ of }: { readonly of: Ref }) => {
  const { site } = useJob();
  const thing = of.list === '/site/obstacles' ? site.obstacles.find((o) => o.id === of.id) : undefined;
  const says = thing ? misfitOf(site, thing) : null;
  return (
    <p role="status" className={says === null ? undefined : css.misfit}>
      {says}
    </p>
  );
};

/** The thing selected with everything of it that can be typed. */
export const SelectedThing = () => {
  const job = useJob();
  const { now, set } = useSheet();
  const change = useChange();
  const of = now.selected;
  if (of === null || pointerOf(job, of) === undefined)
    return (
      <section className={css.section} aria-label={say.nothingSelected}>
        <h2>{say.nothingSelected}</h2>
        <p className={css.say}>{say.nothingSelectedSay}</p>
      </section>
    );
  const isWall = of.list === '/site/outline' || of.list === '/site/partitions';
  const title = nameOf(of);
  return (
    <section className={css.section} aria-label={say.selected({ what: title })}>
      <h2>
        {title} <small>{kindOf(job, of)}</small>
      </h2>
      {/* typed but not taken belongs to one thing only */}
      <div key={`${of.list} ${of.id}`}>
        {of.list !== '' && (
          <TypedField
            spec={NAME}
            value={of.id}
            onSet={(to) => {
              const reason = change({ edit: 'rename record', list: of.list, id: of.id, to: to as string });
              if (reason === null) set({ selected: { list: of.list, id: to as string } });
              return reason;
            }}
          />
        )}
        <OnWallField of={of} />
        {isWall && <WallExtras wall={of.id} list={of.list} />}
        <Misfit of={of} />
        <ThingGroups of={of} />
        {sameRef(of, part('/feeder')) && <FeederExtras />}
        {of.list === '/enclosures' && <PanelExtras of={of} />}
        {of.list === '/cableGroups' && <GroupExtras of={of} />}
        <Course of={of} />
        {of.list !== '' && <RemoveThing of={of} />}
      </div>
    </section>
  );
};
