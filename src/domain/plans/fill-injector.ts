import type { InjectorId, WaxId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { type Problem, problem } from '../problem.ts';
import type { Injector, Shelf, Wax } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten } from './written.ts';

export interface FillInjector {
  readonly injector: InjectorId;
  /** `null` empties it. */
  readonly wax: WaxId | null;
  readonly note?: string | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Which wax an injector holds from now on. Nothing is written when it holds it already. */
export function planFillInjector(shelf: Shelf, desk: Desk, command: FillInjector): readonly Entry[] | Problem {
  const injector = shelf.things.injector.get(command.injector);
  if (!injector || injector.retired) {
    return problem('This injector is no longer in use.', 'Nothing has been written down. Choose another.');
  }
  const wax = command.wax === null ? null : shelf.things.wax.get(command.wax);
  if (wax === undefined || wax?.retired) return formProblem({ wax: 'This wax is no longer in use. Choose another.' });
  if (wax?.use === 'sticky') return formProblem({ wax: `${titleOf(shelf, wax)} is sticky wax, which is not for injecting.` });
  if ((injector.holds ?? null) === command.wax) return [];
  const warning = unconfirmed(wax ? fillWarnings(shelf, injector, wax) : [], command.confirmed);
  if (warning) return warning;
  return allWritten([
    {
      ...desk.entry(),
      kind: 'corrected',
      noun: 'injector',
      of: injector.id,
      fields: { holds: command.wax },
      note: command.note?.trim() || undefined,
    },
  ]);
}

/** A wax for high pressure stays with that injector, and one for low pressure out of it. Common practice, no source. */
function fillWarnings(shelf: Shelf, injector: Injector, wax: Wax): readonly string[] {
  const warnings: string[] = [];
  const [named, into] = [titleOf(shelf, wax), titleOf(shelf, injector)];
  if (wax.pressure === 'needs high' && injector.pressure !== 'high') {
    warnings.push(`${named} needs the high-pressure injector, and ${into} is not one.`);
  }
  if (wax.pressure === 'low only' && injector.pressure === 'high')
    warnings.push(`${named} is for low pressure only, and ${into} works at high pressure.`);
  if (injector.holds !== undefined) {
    warnings.push(
      `${into} holds ${titleOf(shelf, shelf.things.wax.get(injector.holds))}: empty and clean it first, so that the two do not mix.`,
    );
  }
  return warnings;
}
