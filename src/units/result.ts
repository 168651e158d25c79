export type Result<T, E> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const err = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

/** For the default branch of a switch over a union: does not compile while a case is missing. */
export const unreachable = (x: never): never => {
  throw new Error(`Unhandled case: ${JSON.stringify(x)}`);
};
