import type { Code } from './brand.ts';
import { BODY_LENGTH, parseCode } from './label.ts';
import { isProblem } from './problem.ts';

/** A key as it went down. */
export interface Stroke {
  /** What it writes: one character, or the name of the key. */
  readonly key: string;
  /** Which key of the board it is, whatever the layout writes with it, such as `KeyQ` or `Digit1`; empty when nobody can tell. */
  readonly code: string;
  readonly atMs: number;
  /** Held down and writing by itself. */
  readonly isRepeat?: boolean;
}

/** Keys that came so quickly one after another that no hand was at it; empty when the last one was a hand's. */
export type Burst = readonly Stroke[];

/**
 * A scanner that types sends a key every 1 to 20 ms, a slow one by radio every 40 or so; quick hands seldom come below 60 ms between keys
 * of a word, though two fingers can fall together (from memory).
 */
const GAP_MS = 60;
const MEAN_MS = 35;
const LENGTH = BODY_LENGTH + 1;
/** Longer than any label's link. */
const STROKES_MAX = 500;
/** Held to choose a character, and none of their own. */
const HELD = ['Shift', 'CapsLock', 'AltGraph', 'Alt', 'Control'];

/** The burst with one more key, which may begin a new one. */
export function heard(burst: Burst, stroke: Stroke): Burst {
  if (stroke.isRepeat) return [];
  if (HELD.includes(stroke.key)) return burst;
  const last = burst.at(-1);
  if (last && stroke.atMs - last.atMs <= GAP_MS && burst.length < STROKES_MAX) return [...burst, stroke];
  return [stroke];
}

/** Whether a key ends what a scanner sends: they are set to send Enter, or Tab, behind a label. */
export function endsLabel({ key }: Stroke): boolean {
  return key === 'Enter' || key === 'Tab';
}

/**
 * The label a scanner has just typed, or nothing: the burst is quick throughout, ends in Enter or Tab, and what stands before is a label's
 * code or link. A scanner is set to one layout and the computer to another as often as not: where the characters make no sense, the keys'
 * places on the board do. Capitals locked the wrong way round do not matter to a code.
 */
export function labelIn(burst: Burst): Code | undefined {
  const [first, last] = [burst[0], burst.at(-1)];
  const keys = burst.slice(0, -1);
  if (!first || !last || !endsLabel(last) || keys.length < LENGTH) return undefined;
  if ((last.atMs - first.atMs) / keys.length >= MEAN_MS) return undefined;
  const places = keys.map(placeOf);
  const tail = places.slice(-LENGTH).join('');
  const isLink = keys.length > LENGTH + 6 && places.at(-LENGTH - 1) === '.';
  for (const text of [keys.map(({ key }) => key).join(''), places.join(''), ...(isLink ? [tail] : [])]) {
    const code = parseCode(text);
    if (!isProblem(code)) return code;
  }
  return undefined;
}

/** The letter or digit that the key's place stands for; a dot for every other. */
function placeOf({ code }: Stroke): string {
  return /^(?:Key|Digit|Numpad)([A-Z0-9])$/.exec(code)?.[1] ?? '.';
}
