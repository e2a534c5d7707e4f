import type { Day, Sha256 } from './brand.ts';
import { parseEntryId } from './clock.ts';
import { parseDay } from './day.ts';
import { isProblem, type Problem, problem, quoted } from './problem.ts';

/** Reads one unchecked value: the checked value, or what is wrong with it. */
export type Check<T> = (raw: unknown) => T | Problem;
export type Checks = Readonly<Record<string, Check<unknown>>>;
/** The fields a table of checks describes; all may be missing, since a record can be thin. */
export type FieldsOf<C extends Checks> = { readonly [K in keyof C]?: Exclude<ReturnType<C[K]>, Problem> };
/** A change to fields: `null` clears one. */
export type ChangesOf<C extends Checks> = { readonly [K in keyof C]?: Exclude<ReturnType<C[K]>, Problem> | null };

/** A figure out of its range, so that it can be told in the units somebody reads. `part` is its name in a grouped field. */
export interface RangeProblem extends Problem {
  readonly range: { readonly value: number; readonly low: number; readonly high: number; readonly part?: string };
}

export const NAME_MAX = 120;
export const NOTE_MAX = 4000;

/** Control characters of ASCII but tabs and line ends. */
const CONTROL = /(?![\t\n\r\u0080-\u009f])\p{Cc}/gu;

/** Text of 1 to `max` characters, trimmed, without control characters other than new lines and tabs. Markup is kept as plain text. */
export function text(max: number): Check<string> {
  return (raw) => {
    if (typeof raw !== 'string') return problem(`${quoted(raw)} is not text.`);
    const clean = raw.replace(CONTROL, '').trim();
    if (clean.length === 0) return problem('Nothing was written here.');
    if (clean.length > max) return problem(`That is ${clean.length} characters; ${max} fit here.`);
    return clean;
  };
}

/** A finite number within [low, high]. */
export function number<T extends number = number>(low: number, high: number): Check<T> {
  return (raw) => {
    if (typeof raw !== 'number' || !Number.isFinite(raw)) return problem(`${quoted(raw)} is not a number.`);
    if (raw < low || raw > high)
      return { ...problem(`${raw} is outside ${low} to ${high}.`), range: { value: raw, low, high } } satisfies RangeProblem;
    return (raw === 0 ? 0 : raw) as T; // −0 would come back from JSON as 0.
  };
}

/** A whole number within [low, high]. */
export function whole<T extends number = number>(low: number, high: number): Check<T> {
  const inRange = number<T>(low, high);
  return (raw) => {
    const value = inRange(raw);
    if (isProblem(value)) return value;
    return Number.isInteger(value) ? value : problem(`${value} is not a whole number.`);
  };
}

export function flag(raw: unknown): boolean | Problem {
  return typeof raw === 'boolean' ? raw : problem(`${quoted(raw)} is neither yes nor no.`);
}

export function oneOf<const L extends readonly string[]>(list: L): Check<L[number]> {
  return (raw) =>
    typeof raw === 'string' && list.includes(raw) ? (raw as L[number]) : problem(`${quoted(raw)} is not one of: ${list.join(', ')}.`);
}

export function listOf<T>(check: Check<T>, max: number): Check<readonly T[]> {
  return (raw) => {
    if (!Array.isArray(raw)) return problem(`${quoted(raw)} is not a list.`);
    if (raw.length > max) return problem(`The list has ${raw.length} lines; ${max} fit here.`);
    // One with more to it than its lines, or with gaps, is no list that JSON makes.
    let values: T[] | undefined = Object.keys(raw).length === raw.length ? undefined : [];
    for (let at = 0; at < raw.length; at++) {
      const value = check(raw[at]);
      if (isProblem(value)) return value;
      if (values) values.push(value);
      else if (!Object.is(value, raw[at])) values = [...(raw.slice(0, at) as T[]), value];
    }
    return values ?? (raw as T[]);
  };
}

/** An object whose keys come from `keys` and whose values pass `check`. */
export function recordOf<const L extends readonly string[], T>(keys: L, check: Check<T>): Check<{ readonly [K in L[number]]?: T }> {
  return (raw) => {
    if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return problem(`${quoted(raw)} is not a table.`);
    let out: Record<string, unknown> | undefined;
    for (const key of Object.keys(raw)) {
      if (!keys.includes(key)) return problem(`${quoted(key)} is not one of: ${keys.join(', ')}.`);
      const each = (raw as Record<string, unknown>)[key];
      const value = check(each);
      if (isProblem(value)) return value;
      if (!Object.is(value, each)) out = { ...(out ?? raw), [key]: value };
    }
    return (out ?? raw) as { [K in L[number]]?: T };
  };
}

/**
 * An object with exactly the given fields, each checked; fields in `needed` must be there. Unknown fields are refused. What is right as it
 * stands is given back itself, not copied: a restored journal would be made twice.
 */
export function shape<C extends Checks, N extends keyof C & string = never>(
  checks: C,
  needed: readonly N[] = [],
): Check<FieldsOf<C> & { readonly [K in N]: Exclude<ReturnType<C[K]>, Problem> }> {
  const known = new Map(
    Object.entries(checks).map(([key, check]) => [key, { check, isNeeded: (needed as readonly string[]).includes(key) }]),
  );
  return (raw) => {
    if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return problem(`${quoted(raw)} is not a record.`);
    let out: Record<string, unknown> | undefined;
    let missing = needed.length;
    // Twice as quick as going through a list of the keys: 100,000 entries have a million of them.
    for (const key in raw) {
      const field = known.get(key);
      if (!field) return problem(`“${key.slice(0, 40)}” is not a field known here.`);
      const each = (raw as Record<string, unknown>)[key];
      const value = field.check(each);
      if (isProblem(value)) return inPart(key, value);
      if (!Object.is(value, each)) out = { ...(out ?? raw), [key]: value };
      if (field.isNeeded) missing--;
    }
    if (missing > 0) for (const key of needed) if (!Object.hasOwn(raw, key)) return problem(`${key} is missing.`);
    return (out ?? raw) as FieldsOf<C> & { readonly [K in N]: Exclude<ReturnType<C[K]>, Problem> };
  };
}

function inPart(key: string, found: Problem): Problem {
  const told = problem(`${key}: ${found.says}`, found.kept);
  if (!('range' in found)) return told;
  const outer: RangeProblem = { ...told, range: { part: key, ...(found as RangeProblem).range } };
  return outer;
}

/** Allows `null` as well: in a correction it clears the field. */
export function clearable<C extends Checks>(checks: C): Check<ChangesOf<C>> {
  const loose = Object.fromEntries(
    Object.entries(checks).map(([key, check]) => [key, (raw: unknown) => (raw === null ? null : check(raw))]),
  );
  return shape(loose) as Check<ChangesOf<C>>;
}

/** Reference to a thing. The id of a thing is the id of the entry that recorded it. */
export function ref<T extends string>(): Check<T> {
  return (raw) => parseEntryId(raw) as unknown as T | Problem;
}

export const day: Check<Day> = parseDay;

export function sha256(raw: unknown): Sha256 | Problem {
  return typeof raw === 'string' && /^[0-9a-f]{64}$/.test(raw) ? (raw as Sha256) : problem(`${quoted(raw)} is not a picture’s name.`);
}
