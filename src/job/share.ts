/** Keeps of `before` whatever is equal in `now`, so that undo lists hold each value once and unchanged parts stay `===`. */
export const share = <T>(before: unknown, now: T): T => shared(before, now) as T;

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

const shared = (before: unknown, now: unknown): unknown => {
  if (Object.is(before, now) || !isObject(before) || !isObject(now)) return now;
  if (Array.isArray(now)) return Array.isArray(before) ? sharedList(before, now) : now;
  if (Array.isArray(before)) return now;
  const keys = Object.keys(now);
  const parts = keys.map((key) => [key, shared(before[key], now[key])] as const);
  const same = keys.length === Object.keys(before).length && parts.every(([key, part]) => part === before[key]);
  return same ? before : Object.freeze(Object.fromEntries(parts));
};

/** Records are matched by id, so that adding one at the front does not make all others new. */
const sharedList = (before: readonly unknown[], now: readonly unknown[]): readonly unknown[] => {
  const byId = new Map(before.filter(isObject).map((r) => [r.id, r]));
  const parts = now.map((entry, i) => shared(isObject(entry) && 'id' in entry ? byId.get(entry.id) : before[i], entry));
  const same = parts.length === before.length && parts.every((part, i) => part === before[i]);
  return same ? before : Object.freeze(parts);
};
