import { total } from '../bench.ts';
import type { Celsius, Day, Grams, InjectorId, Kilopascals, MouldId, PlaceId, Sha256, WaxId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { WaxFault } from '../fault.ts';
import { formProblem } from '../form-problem.ts';
import { sayCount } from '../measure-words.ts';
import { type Problem, problem } from '../problem.ts';
import type { InjectedWax, Mould, Shelf } from '../shelf.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { runWarnings } from './run-warnings.ts';
import { allWritten, notAhead, notBefore } from './written.ts';

export interface LogRun {
  readonly mould: MouldId;
  readonly shots: number;
  readonly rejects?: { readonly [K in WaxFault]?: number } | undefined;
  readonly wax?: WaxId | undefined;
  readonly injector?: InjectorId | undefined;
  readonly waxC?: Celsius | undefined;
  readonly pressureKpa?: Kilopascals | undefined;
  readonly holdS?: number | undefined;
  /** Where the good waxes went. */
  readonly to?: PlaceId | undefined;
  readonly note?: string | undefined;
  readonly pictures?: readonly Sha256[] | undefined;
  readonly on?: Day | undefined;
  /** What warnings are to be read in. */
  readonly units?: Units | undefined;
  /** The warnings were read. */
  readonly confirmed?: boolean | undefined;
}

/** Waxes that come out of so many shots. */
function waxesFrom(mould: Mould, shots: number): number {
  return shots * (mould.cavities ?? 1);
}

/** The pile that raw waxes of this mould in this wax would join at that place. */
function pileFor(shelf: Shelf, mould: MouldId, wax: WaxId | undefined, at: PlaceId): InjectedWax | undefined {
  for (const id of shelf.contents.get(at) ?? []) {
    const pile = shelf.things.injectedWax.get(id as InjectedWax['id']);
    if (pile && pile.mould === mould && pile.wax === wax && pile.state === 'raw' && !pile.retired) return pile;
  }
  return undefined;
}

/** One sitting of shots of one mould: the shots, what was thrown out and why, the wax, the settings, and where the good waxes went. */
export function planLogRun(shelf: Shelf, desk: Desk, command: LogRun): readonly Entry[] | Problem {
  const { confirmed, on, to, units, rejects: all = {}, ...rest } = command;
  const mould = shelf.things.mould.get(command.mould);
  if (!mould) return problem('This mould is no longer recorded.', 'Nothing has been written down; what you typed is still in the form.');
  const wrongDay = notAhead(on, desk.today) ?? notBefore(mould.made, on);
  if (wrongDay) return wrongDay;
  if (!Number.isInteger(command.shots) || command.shots < 1) return formProblem({ shots: 'A run has at least one shot.' });
  const rejects = Object.fromEntries(Object.entries(all).filter(([, count]) => count !== 0));
  if (Object.values(rejects).some((count) => !Number.isInteger(count) || (count ?? 0) < 0)) {
    return formProblem({ rejects: 'Rejects are counted in whole waxes, none or more.' });
  }
  const made = waxesFrom(mould, command.shots);
  const bad = total(rejects as { [key: string]: number });
  if (bad > made) {
    const each = (mould.cavities ?? 1) > 1 ? ` of ${mould.cavities} waxes each` : '';
    const shots = `${sayCount(command.shots, 'shot')}${each} ${command.shots === 1 ? 'gives' : 'give'}`;
    return formProblem({ rejects: `${bad} rejects are more than the ${sayCount(made, 'wax', 'waxes')} that ${shots}.` });
  }
  const missing = missingOf(shelf, command);
  if (missing) return missing;
  const warning = unconfirmed(runWarnings(shelf, mould, command), confirmed);
  if (warning) return warning;
  const pile = to && bad < made ? pileFor(shelf, mould.id, command.wax, to) : undefined;
  const grams = mould.shotGrams === undefined || !command.wax ? undefined : ((mould.shotGrams * command.shots) as Grams);
  return allWritten(
    [
      {
        ...desk.entry(),
        ...(on ? { on } : {}),
        kind: 'injected',
        ...rest,
        ...(bad > 0 ? { rejects } : {}),
        good: made - bad,
        grams,
        ...(pile ? { onto: pile.id } : { to }),
      },
    ],
    units,
  );
}

function missingOf(shelf: Shelf, { wax, injector, to }: LogRun): Problem | undefined {
  if (wax && !shelf.things.wax.has(wax)) return formProblem({ wax: 'This wax is no longer recorded. Choose another.' });
  if (injector && !shelf.things.injector.has(injector))
    return formProblem({ injector: 'This injector is no longer recorded. Choose another.' });
  if (to && !shelf.things.place.has(to)) return formProblem({ to: 'This place is no longer recorded. Choose another.' });
  return undefined;
}
