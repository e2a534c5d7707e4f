import type { Code } from './brand.ts';
import { parseCode } from './label.ts';
import { isProblem, type Problem } from './problem.ts';
import { eachOnce, type Point, type Sighting } from './sighting.ts';

/** A label of the studio's in view. */
export interface SeenLabel {
  readonly code: Code;
  readonly corners: readonly Point[];
}

/** What a look amounts to: one label to be taken, several to choose from, something foreign, or nothing. */
export interface Heard {
  readonly code?: Code;
  /** Given while there is a choice; empty once it is over. */
  readonly several?: readonly SeenLabel[];
  readonly stranger?: Problem;
}

/** The studio's labels among what was seen, each once. Two symbols of one label, such as its link and its code, are one. */
export function labelsIn(sightings: readonly Sighting[]): readonly SeenLabel[] {
  const labels = new Map<Code, SeenLabel>();
  for (const { text, corners } of eachOnce(sightings)) {
    const code = parseCode(text);
    if (!isProblem(code) && !labels.has(code)) labels.set(code, { code, corners });
  }
  return [...labels.values()];
}

/** A label held before the camera counts once, until it has been out of sight this long. ms */
const SAME_MS = 2000;
/** Once there was a choice, one label alone is taken only after this long without the others. ms */
const ALONE_MS = 1500;

/** Makes sense of look after look at the same video; `nowMs` only has to grow. */
export function makeListening(): (sightings: readonly Sighting[], nowMs: number) => Heard {
  let last: { readonly text: string; readonly at: number } | undefined;
  let choosingAt: number | undefined;
  return (sightings, nowMs) => {
    const labels = labelsIn(sightings);
    if (labels.length > 1) {
      choosingAt = nowMs;
      return { several: labels };
    }
    const isOver = choosingAt !== undefined && nowMs - choosingAt > ALONE_MS;
    if (choosingAt !== undefined && !isOver) return {};
    if (isOver) choosingAt = undefined;
    const over = isOver ? { several: [] } : {};
    const text = labels[0]?.code ?? sightings[0]?.text;
    if (text === undefined) return over;
    const isNew = text !== last?.text || nowMs - last.at > SAME_MS;
    last = { text, at: nowMs };
    if (!isNew) return over;
    const code = parseCode(text);
    return isProblem(code) ? { ...over, stranger: code } : { ...over, code };
  };
}
