import { LOOK_DAYS } from '../domain/flag.ts';
import { formProblem } from '../domain/form-problem.ts';
import { DEFAULT_LIFE } from '../domain/life.ts';
import { RUBBERS, type Rubber } from '../domain/mould.ts';
import type { StudioFigures } from '../domain/plans/studio-figures.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { StudioFields } from '../domain/studio.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';

/** Only what was typed, by cell: `name`, `lookDays`, “RUBBER shots”, “RUBBER years”. All else follows the studio. */
export type TypedFigures = Readonly<Record<string, string>>;

export const LIFE_FIGURES = ['shots', 'years'] as const;
export type LifeFigure = (typeof LIFE_FIGURES)[number];
export const cellOf = (rubber: Rubber, figure: LifeFigure) => `${rubber} ${figure}`;

/** What stands in a cell before anybody types. */
export function lifeShown(studio: StudioFields, rubber: Rubber, figure: LifeFigure): string {
  return String(studio.life?.[rubber]?.[figure] ?? DEFAULT_LIFE[rubber][figure]);
}

/** What was typed as a command; a figure that is none comes back beside its cell. */
export function figuresCommand(typed: TypedFigures, studio: StudioFields): StudioFigures | Problem {
  const wrong: Record<string, string> = {};
  const figure = (cell: string) => {
    const read = parseTypedNumber(typed[cell] ?? '');
    if (!isProblem(read)) return read;
    wrong[cell] = read.says;
    return undefined;
  };
  const life: { [R in Rubber]?: { shots?: number | undefined; years?: number | undefined } } = {};
  for (const rubber of RUBBERS) {
    const cells = LIFE_FIGURES.filter((each) => cellOf(rubber, each) in typed);
    if (cells.length === 0) continue;
    const own = studio.life?.[rubber] ?? {};
    life[rubber] = { ...own, ...Object.fromEntries(cells.map((each) => [each, figure(cellOf(rubber, each))])) };
  }
  const lookDays = 'lookDays' in typed ? (figure('lookDays') ?? null) : undefined;
  return Object.keys(wrong).length > 0 ? formProblem(wrong) : { name: typed['name'], lookDays, life };
}

export const lookDaysShown = (studio: StudioFields) => String(studio.lookDays ?? LOOK_DAYS);
