import type { PeriodId, PlaceId } from '../brand.ts';
import { PLACE_FOR } from '../place.ts';
import { type Drawing, type DrawnFront, FRONT_KINDS, FRONTS_MAX, type Gone, SIDE_MAX_MM } from './drawing.ts';
import type { Steps } from './history.ts';

type Raw = Readonly<Record<string, unknown>>;

function isRaw(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isMm(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value) && Math.abs(value) <= SIDE_MAX_MM;
}

/** Undefined in a place of its own means that the field is unreadable, since most may be absent. */
function frontOf(raw: unknown): DrawnFront | undefined {
  if (!isRaw(raw) || !isRaw(raw['box'])) return undefined;
  const { key, of, label, open, periods, capacity, for: use } = raw;
  const { x, y, w, h } = raw['box'];
  const kind = FRONT_KINDS.find((each) => each === raw['kind']);
  const purpose = PLACE_FOR.find((each) => each === use);
  if (!isText(key) || !isText(label) || !kind || !isMm(x) || !isMm(y) || !isMm(w) || !isMm(h) || w <= 0 || h <= 0) return undefined;
  return {
    key,
    label,
    kind,
    periods: Array.isArray(periods) ? (periods.filter(isText) as PeriodId[]) : [],
    box: { x, y, w, h },
    ...(isText(of) ? { of: of as PlaceId } : {}),
    ...(typeof open === 'boolean' ? { open } : {}),
    ...(purpose ? { for: purpose } : {}),
    ...(typeof capacity === 'number' && Number.isSafeInteger(capacity) && capacity > 0 ? { capacity } : {}),
  };
}

function goneOf(raw: unknown): Gone | undefined {
  if (!isRaw(raw) || !isText(raw['of']) || !isText(raw['label'])) return undefined;
  return { of: raw['of'] as PlaceId, label: raw['label'], ...(isText(raw['to']) ? { to: raw['to'] } : {}) };
}

/**
 * A drawing that was kept as text; null when any of its fronts cannot be read, since a cabinet that lacks some would be saved as one without
 * them.
 */
export function keptDrawing(raw: unknown): Drawing | null {
  if (!isRaw(raw) || !Array.isArray(raw['fronts']) || !Array.isArray(raw['gone'])) return null;
  const { widthMm, heightMm, next } = raw;
  if (!isMm(widthMm) || !isMm(heightMm) || widthMm <= 0 || heightMm <= 0 || raw['fronts'].length > FRONTS_MAX) return null;
  const fronts = raw['fronts'].map(frontOf);
  const gone = raw['gone'].map(goneOf);
  if (!fronts.every((front) => front !== undefined) || !gone.every((each) => each !== undefined)) return null;
  if (new Set(fronts.map(({ key }) => key)).size < fronts.length) return null;
  if (typeof next !== 'number' || !Number.isSafeInteger(next) || next < 0) return null;
  return { widthMm, heightMm, fronts, gone, next };
}

export interface KeptSteps {
  readonly steps: Steps;
  /** Which could not be read: `newest`, so that it is as it was some steps before, or only some of the `others`. */
  readonly lost?: 'newest' | 'others';
}

/** Steps that were kept as text: those that can be read, the newest of them being what it is now. Null when there are none. */
export function keptSteps(raw: unknown): KeptSteps | null {
  if (!isRaw(raw)) return null;
  const [past, now, future] = [listOf(raw['past']), keptDrawing(raw['now']), listOf(raw['future'])];
  if (now) return { steps: { past: past.read, now, future: future.read }, ...(past.isWhole && future.isWhole ? {} : { lost: 'others' }) };
  const before = past.read.at(-1);
  return before ? { steps: { past: past.read.slice(0, -1), now: before, future: [] }, lost: 'newest' } : null;
}

function listOf(raw: unknown): { readonly read: readonly Drawing[]; readonly isWhole: boolean } {
  const each = Array.isArray(raw) ? raw.map(keptDrawing) : [null];
  const read = each.filter((drawing) => drawing !== null);
  return { read, isWhole: read.length === each.length };
}
