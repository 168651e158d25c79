/** What the screens ask of the browser around them; `app` gives it. */
export interface Demo {
  readonly name: string;
  readonly title: string;
  readonly about: string;
}
export type Theme = 'light' | 'dark';
/** desk: a pointer and small controls · field: one hand, large ones. */
export type Hand = 'desk' | 'field';

export interface Host {
  readonly demos: readonly Demo[];
  /** The text of a demo job file. */
  readonly demoText: (name: string) => Promise<string>;
  /** Hands a file to the person. */
  readonly download: (fileName: string, text: string) => void;
  readonly look: () => { readonly theme: Theme; readonly hand: Hand };
  readonly setLook: (look: { readonly theme?: Theme; readonly hand?: Hand }) => void;
  /** Calls back when a new version of the app has been fetched and waits; `load` changes over to it. */
  readonly onUpdate: (ready: (load: () => void) => void) => () => void;
  /** Local time of day of an ISO time. */
  readonly timeOfDay: (iso: string) => string;
}
