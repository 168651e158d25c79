/** What bad input gets: located by a JSON pointer, said in words, exit code 2. */
export interface Fault {
  readonly error: { readonly type: string; readonly path: string; readonly say: string };
}
