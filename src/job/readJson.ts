import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { jobWords } from '../words/en/job';
import { faultAt } from './pointer';

/**
 * Reads JSON text (RFC 8259) from outside: every refusal is located, nothing is silently lost, and no input can hang
 * or overflow. Written out because the built-in reader drops repeated keys, accepts any depth and locates its errors
 * differently in every browser.
 */
export const JSON_LIMITS = { characters: 64_000_000, depth: 40, entries: 20_000, values: 400_000 } as const;

/** Keys that reach an object's prototype. */
export const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORDS: readonly (readonly [string, unknown])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
];

/** Unwinds the reader from any depth; never leaves this file. */
class Refused {
  constructor(readonly fault: Fault) {}
}

export const readJson = (text: string): Result<unknown, Fault> => {
  if (text.length > JSON_LIMITS.characters) {
    const v = { characters: text.length, most: JSON_LIMITS.characters };
    return err(faultAt('too-large', [], jobWords.tooLarge(v)));
  }
  try {
    return ok(new Reader(text).document());
  } catch (refused) {
    if (refused instanceof Refused) return err(refused.fault);
    throw refused;
  }
};

class Reader {
  private at = 0;
  private values = 0;
  private readonly path: (string | number)[] = [];

  constructor(private readonly text: string) {}

  document(): unknown {
    if (this.text.charCodeAt(0) === 0xfeff) this.at = 1; // a byte order mark some editors write
    const value = this.value();
    this.space();
    if (this.at < this.text.length) this.syntax(jobWords.expectedEnd);
    return value;
  }

  private refuse(type: string, say: string): never {
    throw new Refused(faultAt(type, this.path, say));
  }

  private syntax(expected: string): never {
    const before = this.text.slice(0, this.at);
    const line = before.split('\n').length;
    const column = this.at - before.lastIndexOf('\n');
    const point = this.text.codePointAt(this.at);
    const found = point === undefined ? jobWords.endOfFile : JSON.stringify(String.fromCodePoint(point));
    throw new Refused(faultAt('not-json', [], jobWords.syntax({ line, column, expected, found })));
  }

  private space(): void {
    for (;;) {
      const c = this.text.charCodeAt(this.at);
      if (c !== 32 && c !== 10 && c !== 13 && c !== 9) return;
      this.at++;
    }
  }

  private value(): unknown {
    if (++this.values > JSON_LIMITS.values) this.refuse('too-many', jobWords.tooMany({ most: JSON_LIMITS.values }));
    this.space();
    const c = this.text[this.at];
    if (c === '{') return this.object();
    if (c === '[') return this.list();
    if (c === '"') return this.string();
    if (c !== undefined && /[-\d]/.test(c)) return this.number();
    for (const [word, meaning] of WORDS) {
      if (!this.text.startsWith(word, this.at)) continue;
      this.at += word.length;
      return meaning;
    }
    return this.syntax(c !== undefined && /[a-z]/i.test(c) ? jobWords.expectedWord : jobWords.expectedValue);
  }

  /** After an entry: true at a comma, false at the closing mark. */
  private more(close: string): boolean {
    this.space();
    const c = this.text[this.at];
    if (c !== ',' && c !== close) this.syntax(jobWords.expectedMark({ marks: `"," or "${close}"` }));
    this.at++;
    return c === ',';
  }

  /** Past the opening mark; true when the list or object is empty. */
  private open(close: string): boolean {
    if (this.path.length >= JSON_LIMITS.depth) this.refuse('too-deep', jobWords.tooDeep({ most: JSON_LIMITS.depth }));
    this.at++;
    this.space();
    if (this.text[this.at] !== close) return false;
    this.at++;
    return true;
  }

  private list(): unknown[] {
    const list: unknown[] = [];
    if (this.open(']')) return list;
    do {
      if (list.length >= JSON_LIMITS.entries) this.refuse('too-many', jobWords.tooMany({ most: JSON_LIMITS.entries }));
      this.path.push(list.length);
      list.push(this.value());
      this.path.pop();
    } while (this.more(']'));
    return list;
  }

  private object(): Record<string, unknown> {
    const object: Record<string, unknown> = {};
    let size = 0;
    if (this.open('}')) return object;
    do {
      if (++size > JSON_LIMITS.entries) this.refuse('too-many', jobWords.tooMany({ most: JSON_LIMITS.entries }));
      this.space();
      if (this.text[this.at] !== '"') this.syntax(jobWords.expectedKey);
      const key = this.string();
      this.path.push(key);
      if (FORBIDDEN_KEYS.has(key)) this.refuse('forbidden-key', jobWords.forbiddenKey({ key }));
      if (Object.hasOwn(object, key)) this.refuse('duplicate-key', jobWords.duplicateKey({ key }));
      this.space();
      if (this.text[this.at] !== ':') this.syntax(jobWords.expectedMark({ marks: '":"' }));
      this.at++;
      object[key] = this.value();
      this.path.pop();
    } while (this.more('}'));
    return object;
  }

  private string(): string {
    const start = this.at++;
    let escaped = false;
    for (;;) {
      const c = this.text.charCodeAt(this.at);
      if (c === 34) break;
      if (!(c >= 32)) this.syntax(jobWords.expectedText); // a control character, or past the end (not a number)
      escaped ||= c === 92;
      this.at += c === 92 ? 2 : 1;
    }
    this.at++;
    if (!escaped) return this.text.slice(start + 1, this.at - 1);
    try {
      return JSON.parse(this.text.slice(start, this.at)) as string;
    } catch {
      this.at = start;
      return this.syntax(jobWords.expectedText);
    }
  }

  private number(): number {
    NUMBER.lastIndex = this.at;
    const found = NUMBER.exec(this.text)?.[0];
    if (found === undefined) return this.syntax(jobWords.expectedNumber);
    this.at += found.length;
    const value = Number(found);
    if (!Number.isFinite(value)) this.refuse('out-of-range', jobWords.notFinite({ text: found.slice(0, 40) }));
    return value + 0; // -0 is written 0
  }
}
