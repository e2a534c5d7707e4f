import type { Day, Grams, ThingId } from '../domain/brand.ts';
import { formProblem } from '../domain/form-problem.ts';
import { isKin } from '../domain/lineage/kin.ts';
import type { Measure } from '../domain/plans/measure.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { readingsOf } from '../domain/size/learn.ts';
import { sameDimension } from '../domain/size/reading.ts';
import { lineUp } from '../domain/size/step.ts';
import { parsePastDay } from '../domain/typed-day.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';
import { gramsFrom, mmFrom, type Units } from '../domain/units.ts';

/** Readings as typed; one line for each dimension. */
export interface MeasureDraft {
  readonly names: readonly string[];
  readonly readings: readonly string[];
  readonly weight: string;
  readonly note: string;
  readonly on: string;
}

const USUAL = ['length', 'width', 'height', 'inside diameter', 'thickness'];

/** Dimensions somebody measured on the thing or on what it came from, which is where readings teach something; else the length. */
export function startMeasure(shelf: Shelf, thing: Thing): MeasureDraft {
  const above = isKin(thing) ? lineUp(shelf, thing).flatMap((each) => readingsOf(each.thing).map(({ name }) => name)) : [];
  const own = (thing.measured?.sizes ?? []).map(({ name }) => name);
  const names = [...above, ...own].filter((name, at, all) => all.findIndex((each) => sameDimension(each, name)) === at).slice(0, 6);
  const first = names.length > 0 ? names : ['length'];
  return { names: first, readings: first.map(() => ''), weight: '', note: '', on: '' };
}

/** Names to offer for another dimension. */
export function dimensionNames(shelf: Shelf, taken: readonly string[]): readonly string[] {
  const known = [...shelf.things.master.values(), ...shelf.things.casting.values()].flatMap(({ measured }) =>
    (measured?.sizes ?? []).map(({ name }) => name),
  );
  return [...new Set([...USUAL, ...known])].filter((name) => !taken.some((each) => sameDimension(each, name))).slice(0, 12);
}

/** What was typed as a command; what is none comes back beside its line, `size 0`, `name 0` …, `grams` or `on`. */
export function measureCommand(of: ThingId, draft: MeasureDraft, units: Units, today: Day): Measure | Problem {
  const wrong: Record<string, string> = {};
  const sizes = draft.readings.flatMap((typed, at) => {
    const read = parseTypedNumber(typed);
    const name = (draft.names[at] ?? '').trim();
    if (read === undefined) return [];
    if (isProblem(read)) wrong[`size ${at}`] = read.says;
    else if (name === '') wrong[`name ${at}`] = 'Say what was measured.';
    else if (read <= 0) wrong[`size ${at}`] = 'A reading is more than nothing.';
    else return [{ name, mm: (Math.round(mmFrom(read, units.length) * 10_000) / 10_000) as ReturnType<typeof mmFrom> }];
    return [];
  });
  const weight = parseTypedNumber(draft.weight);
  if (isProblem(weight)) wrong['grams'] = weight.says;
  const on = parsePastDay(draft.on, today);
  if (isProblem(on)) wrong['on'] = on.says;
  if (Object.keys(wrong).length > 0 || isProblem(weight) || isProblem(on)) return formProblem(wrong);
  const grams = weight === undefined ? undefined : (gramsFrom(weight, units.mass) as Grams);
  return { of, sizes, grams, note: draft.note, on, units };
}

/** What each field holds, by the name its problems have. */
export function measured({ names, readings, weight, note, on }: MeasureDraft): object {
  const lines = [...names.map((name, at) => [`name ${at}`, name]), ...readings.map((reading, at) => [`size ${at}`, reading])];
  return { ...Object.fromEntries(lines), sizes: [...names, ...readings, weight].join('\n'), grams: weight, note, on };
}
