import type { Demo } from '../screens/host';
import { demoWords as say } from '../words/en/demos';

/** The demo jobs, fetched from our own origin when one is opened. */
const TEXTS: Readonly<Record<string, () => Promise<{ readonly default: string }>>> = {
  washer: () => import('../../demo/washer.job.json?raw'),
  'l-shaped': () => import('../../demo/l-shaped.job.json?raw'),
  'small-house': () => import('../../demo/small-house.job.json?raw'),
};

export const DEMOS: readonly Demo[] = Object.keys(TEXTS).map((name) => ({
  name,
  ...say[name as keyof typeof say],
}));

export const demoText = async (name: string): Promise<string> => {
  const load = TEXTS[name];
  if (!load) throw new Error(`No demo is called ${name}`);
  return (await load()).default;
};
