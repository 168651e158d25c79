import type { ReactNode } from 'react';
import { sceneWords } from '../words/en/scene';
import css from './scene.module.css';

const say = sceneWords.tools;
const icon = (d: string): ReactNode => (
  <svg viewBox="0 0 20 20" aria-hidden="true">
    <path d={d} />
  </svg>
);
const ICONS = {
  left: icon('M15 13.5a6 4.2 0 1 0-10.4-3.2M4.2 6.4l.4 4 3.9-.6'),
  right: icon('M5 13.5a6 4.2 0 1 1 10.4-3.2M15.8 6.4l-.4 4-3.9-.6'),
  nearer: icon('M10 4v12M4 10h12'),
  farther: icon('M4 10h12'),
  fit: icon('M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 7h6v6H7z'),
  eye: icon('M10 3.2a1.8 1.8 0 1 1 0 3.6 1.8 1.8 0 0 1 0-3.6M10 7v6M6.5 9h7M10 13l-3 4M10 13l3 4'),
  section: icon('M3 6l7-3 7 3v8l-7 3-7-3zM10 3v14M13 6v7M15.5 7v5.5'),
} as const;
const KEYS = { left: '←', right: '→', nearer: '+', farther: '−', fit: 'W', eye: 'E', section: 'X' } as const;
export type SceneTool = keyof typeof ICONS;

interface Props {
  readonly on: Readonly<Partial<Record<SceneTool, boolean>>>;
  readonly off: readonly SceneTool[];
  readonly onTool: (tool: SceneTool) => void;
}
/** How the view is seen: each with its key, which works while the view has the focus. */
export const SceneTools = ({ on, off, onTool }: Props) => (
  <div className={css.tools} role="toolbar" aria-label={say.title}>
    {(Object.keys(ICONS) as SceneTool[]).map((tool) => (
      <button
        key={tool}
        type="button"
        className={css.tool}
        disabled={off.includes(tool)}
        aria-pressed={tool === 'eye' || tool === 'section' ? (on[tool] ?? false) : undefined}
        onClick={() => onTool(tool)}
      >
        {ICONS[tool]}
        <span className={css.long}>{say[tool]}</span>
        <span className={css.short}>{say.short[tool]}</span>
        <kbd>{KEYS[tool]}</kbd>
      </button>
    ))}
  </div>
);
