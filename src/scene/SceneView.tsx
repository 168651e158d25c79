import { Canvas } from '@react-three/fiber';
import { type KeyboardEvent, type PointerEvent, type ReactNode, useCallback, useId, useRef, useState } from 'react';
import type { MapModel } from '../drawings/mapModel';
import type { Effect, Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { formatFeetInches } from '../units/length';
import type { Id, Pt } from '../units/types';
import { sceneWords as say } from '../words/en/scene';
import { Eye, type EyeHandle, type EyeMode } from './Eye';
import { Guard } from './Guard';
import { House } from './House';
import { Lettering } from './Lettering';
import { type Lettered, Letters } from './Letters';
import { type Picked, pickAt } from './pick';
import { type SceneTool, SceneTools } from './SceneTools';
import { SectionTool } from './SectionTool';
import css from './scene.module.css';
import { rangeOf, type Section, startOf } from './section';
import { makeShared } from './shared';
import { useHouse } from './useHouse';
import { EYE_HEIGHT_IN, type Margin, project, startBearing } from './view';
import { type Drawn, Wiring } from './Wiring';

interface Props {
  readonly job: Job;
  readonly option: Option;
  /** The option's plan, null as long as there is none for the job as it is now. */
  readonly plan: Plan | null;
  /** Where the panel can go, where that is shown. */
  readonly map: MapModel | null;
  /** Id of the thing, panel, box or home run that is selected in all drawings. */
  readonly selected: Id | null;
  /** Something was pointed at; null where nothing is. */
  readonly onSelect: (picked: Picked | null) => void;
  /** Number of the key note singled out. */
  readonly note: number | null;
  /** Number of this view on its sheet. */
  readonly number: number;
  readonly hand: 'desk' | 'field';
  /** Few pixels and sides, for tests and slow devices. */
  readonly coarse: boolean;
  /** Gives the scene graph to whoever looks at the page's `__scene`. */
  readonly exposed: boolean;
  /** The mark of a finding around the origin of an SVG, as the other drawings paint it. */
  readonly paintMark: (effect: Effect, number: number) => ReactNode;
}

/** Room for the title above and lettering around, px. */
const MARGIN: Margin = { top: 62, right: 40, bottom: 20, left: 40 };
const TURN = 15;
const KEY_TURN = 7.5;
const NEARER = 1.25;
const CLICK_PX = 5;
const PICK_PX = { desk: 6, field: 16 } as const;
const KEYS: Readonly<Record<string, SceneTool>> = {
  '+': 'nearer',
  '=': 'nearer',
  '-': 'farther',
  w: 'fit',
  e: 'eye',
  x: 'section',
};
const ARROWS: Readonly<Record<string, readonly [left: number, up: number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const canDraw = (): boolean => document.createElement('canvas').getContext('webgl2') !== null;

/** The option seen in space: from outside with the walls toward the eye left out, or standing in the room. */
export const SceneView = (props: Props) => {
  const { job, option, plan, map, selected, onSelect, note, number, hand, coarse, exposed, paintMark } = props;
  const { house, names, marks, list, points, panel, inRoom } = useHouse(job, option, plan, map);
  const [able] = useState(canDraw);
  const [shared] = useState(makeShared);
  const [mode, setMode] = useState<EyeMode>('outside');
  const start = startBearing(panel?.into ?? null);
  const [bearing, setBearing] = useState(start);
  const [section, setSection] = useState<Section | null>(null);
  const [lost, setLost] = useState(false);
  const [lettered, setLettered] = useState<Lettered | null>(null);
  const eye = useRef<EyeHandle | null>(null);
  const drawn = useRef<Drawn | null>(null);
  const pressed = useRef<Pt | null>(null);
  const how = useId();
  const hear = useCallback((made: Drawn) => {
    drawn.current = made;
  }, []);

  if (!able) return <p className={css.instead}>{say.noWebGl}</p>;

  const choose: Readonly<Record<SceneTool, () => void>> = {
    left: () => eye.current?.turn(TURN, 0),
    right: () => eye.current?.turn(-TURN, 0),
    nearer: () => eye.current?.nearer(NEARER),
    farther: () => eye.current?.nearer(1 / NEARER),
    fit: () => eye.current?.fit(),
    eye: () => setMode((m) => (m === 'outside' ? 'inside' : 'outside')),
    section: () => setSection((s) => (s ? null : { axis: 'facing', at: startOf('facing') })),
  };
  const keyed = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const tool = KEYS[event.key.toLowerCase()];
    const arrow = ARROWS[event.key];
    if (arrow) eye.current?.turn(arrow[0] * KEY_TURN, arrow[1] * KEY_TURN);
    else if (tool) choose[tool]();
    else if (event.key === 'Escape' && selected !== null) onSelect(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const released = (event: PointerEvent<HTMLDivElement>): void => {
    const from = pressed.current;
    pressed.current = null;
    if (!from || !drawn.current || event.button !== 0) return;
    if (Math.hypot(event.clientX - from[0], event.clientY - from[1]) > CLICK_PX) return;
    const box = event.currentTarget.getBoundingClientRect();
    const camera = drawn.current.camera();
    const at: Pt = [event.clientX - box.left, event.clientY - box.top];
    const { scene } = drawn.current;
    const within = PICK_PX[hand];
    const on = (p: Parameters<typeof project>[0]) => project(p, camera, box);
    onSelect(pickAt(at, { scene, camera, house, project: on, size: box, within, after: selected }));
  };
  const inside = mode === 'inside';
  return (
    <section className={css.scene} aria-label={say.viewOf({ option: option.title })}>
      <Guard instead={(why) => <p className={css.instead}>{say.failed({ say: why })}</p>}>
        <div
          className={css.picture}
          role="application"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: its keys need the focus
          tabIndex={0}
          aria-label={say.viewOf({ option: option.title })}
          aria-describedby={how}
          onKeyDown={keyed}
          onPointerDown={(event) => {
            pressed.current = [event.clientX, event.clientY];
          }}
          onPointerUp={released}
        >
          <Canvas
            frameloop="demand"
            linear
            flat
            dpr={coarse ? 0.5 : [1, 2]}
            gl={{ antialias: !coarse, alpha: true, powerPreference: 'default' }}
          >
            <Eye
              mode={mode}
              start={start}
              points={points}
              margin={MARGIN}
              panel={panel}
              inRoom={inRoom}
              shared={shared}
              handle={eye}
              onBearing={setBearing}
            />
            <House house={house} selected={selected} coarse={coarse} shared={shared} />
            <Wiring shared={shared} section={section} panel={panel} exposed={exposed} onLost={setLost} onDrawn={hear} />
            <Letters names={names} marks={marks} house={house} hand={hand} shared={shared} onLettered={setLettered} />
          </Canvas>
          {lettered && !lost && (
            <Lettering settled={lettered.settled} size={lettered} note={note} paintMark={paintMark} />
          )}
          <div className={css.title} aria-hidden="true">
            <span className={css.number}>{number}</span>
            <span>
              <span className={css.name}>{inside ? say.titleInside : say.title({ bearing })}</span>
              <span className={css.under}>
                {inside ? say.subtitle.inside({ height: formatFeetInches(EYE_HEIGHT_IN) }) : say.subtitle.out}
              </span>
            </span>
          </div>
          {lost && (
            <p className={css.message} role="status">
              {say.lost}
            </p>
          )}
        </div>
        <SceneTools
          on={{ eye: inside, section: section !== null }}
          off={inside ? ['fit'] : []}
          onTool={(tool) => choose[tool]()}
        />
        {section && panel && (
          <SectionTool section={section} range={rangeOf(section.axis, panel, points)} onSection={setSection} />
        )}
      </Guard>
      <p id={how} className={css.hidden}>
        {say.how}
      </p>
      <ul className={css.hidden} aria-label={say.list.title}>
        {list.map((line) => (
          <li key={line.id}>{line.say}</li>
        ))}
      </ul>
    </section>
  );
};
