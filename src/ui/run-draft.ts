import type { Day, InjectorId, MouldId, PlaceId, Sha256, WaxId } from '../domain/brand.ts';
import type { WaxFault } from '../domain/fault.ts';
import { formProblem } from '../domain/form-problem.ts';
import type { LogRun } from '../domain/plans/log-run.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { parsePastDay } from '../domain/typed-day.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';
import { celsiusFrom, kpaFrom, pressureIn, temperatureIn, type Units } from '../domain/units.ts';
import type { Offered } from '../views/run-form.ts';

/** The run form as typed. */
export interface RunDraft {
  readonly shots: number;
  readonly rejects: { readonly [F in WaxFault]?: number };
  readonly wax: string;
  readonly injector: string;
  readonly waxC: string;
  readonly pressureKpa: string;
  readonly holdS: string;
  readonly to: string;
  readonly note: string;
  /** Empty for today. */
  readonly on: string;
  readonly pictures: readonly Sha256[];
}

const typed = (value: number | undefined) => (value === undefined ? '' : String(Math.round(value * 100) / 100));

export function startRun(offered: Offered, units: Units): RunDraft {
  return {
    shots: 0,
    rejects: {},
    wax: offered.wax ?? '',
    injector: offered.injector ?? '',
    waxC: typed(offered.waxC === undefined ? undefined : temperatureIn(offered.waxC, units.temperature)),
    pressureKpa: typed(offered.pressureKpa === undefined ? undefined : pressureIn(offered.pressureKpa, units.pressure)),
    holdS: typed(offered.holdS),
    to: offered.to ?? '',
    note: '',
    on: '',
    pictures: [],
  };
}

/** What was typed as a command; a figure that is none comes back beside its field. */
export function runCommand(mould: MouldId, draft: RunDraft, units: Units, today: Day): LogRun | Problem {
  const figures = {
    waxC: parseTypedNumber(draft.waxC),
    pressureKpa: parseTypedNumber(draft.pressureKpa),
    holdS: parseTypedNumber(draft.holdS),
  };
  const on = parsePastDay(draft.on, today);
  const wrong = Object.fromEntries(
    Object.entries({ ...figures, on }).flatMap(([field, value]) => (isProblem(value) ? [[field, value.says]] : [])),
  );
  if (isProblem(on) || Object.keys(wrong).length > 0) return formProblem(wrong);
  const { waxC, pressureKpa, holdS } = figures as { [field: string]: number | undefined };
  return {
    mould,
    units,
    shots: draft.shots,
    rejects: draft.rejects,
    wax: (draft.wax || undefined) as WaxId | undefined,
    injector: (draft.injector || undefined) as InjectorId | undefined,
    waxC: waxC === undefined ? undefined : rounded(celsiusFrom(waxC, units.temperature)),
    pressureKpa: pressureKpa === undefined ? undefined : rounded(kpaFrom(pressureKpa, units.pressure)),
    holdS,
    to: (draft.to || undefined) as PlaceId | undefined,
    note: draft.note.trim() || undefined,
    on,
    pictures: draft.pictures.length > 0 ? draft.pictures : undefined,
  };
}

/** Two decimals: what a dial can show, and no tails from the conversion. */
function rounded<T extends number>(value: T): T {
  return (Math.round(value * 100) / 100) as T;
}
