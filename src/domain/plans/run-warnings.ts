import type { Celsius, InjectorId, Kilopascals, WaxId } from '../brand.ts';
import { dayInWords } from '../day-words.ts';
import { sayPressure, sayTemperature } from '../measure-words.ts';
import type { Injector, Mould, Shelf, Wax } from '../shelf.ts';
import { titleOf } from '../title.ts';
import type { Units } from '../units.ts';

export interface RunChoice {
  readonly wax?: WaxId | undefined;
  readonly injector?: InjectorId | undefined;
  readonly waxC?: Celsius | undefined;
  readonly pressureKpa?: Kilopascals | undefined;
  /** What the warnings are to be read in; SI where nobody chose. */
  readonly units?: Units | undefined;
}

/** What a careful caster would say before this mould, wax, injector and setting are used together. */
export function runWarnings(shelf: Shelf, mould: Mould, choice: RunChoice): readonly string[] {
  const wax = choice.wax ? shelf.things.wax.get(choice.wax) : undefined;
  const injector = choice.injector ? shelf.things.injector.get(choice.injector) : undefined;
  return [...mouldWarnings(mould), ...(wax ? waxWarnings(shelf, wax, injector, choice) : []), ...pressureWarnings(shelf, injector, choice)];
}

/** Why a mould should not be picked for a run: it failed, or was taken out of use. */
export function mouldWarnings(mould: Mould): readonly string[] {
  const warnings: string[] = [];
  if (mould.retired) warnings.push(`This mould was retired on ${dayInWords(mould.retired.on)}: ${mould.retired.reason}.`);
  if (mould.grade === 'failed') {
    const why = mould.faults?.length ? `: ${mould.faults.join(', ')}` : '';
    warnings.push(`This mould was marked failed${mould.gradeOn ? ` on ${dayInWords(mould.gradeOn)}` : ''}${why}.`);
  }
  return warnings;
}

function waxWarnings(shelf: Shelf, wax: Wax, injector: Injector | undefined, { waxC, units }: RunChoice): readonly string[] {
  const name = titleOf(shelf, wax);
  const warnings: string[] = [];
  if (wax.use === 'sticky') warnings.push(`${name} is a sticky wax: it holds pieces in place and is not for injecting.`);
  if (wax.retired) warnings.push(`${name} was retired: ${wax.retired.reason}.`);
  if (injector?.pressure && wax.pressure === 'needs high' && injector.pressure !== 'high') {
    const kind = injector.pressure === 'hand' ? 'worked by hand' : 'a low-pressure one';
    warnings.push(`${name} needs the high-pressure injector; ${titleOf(shelf, injector)} is ${kind}.`);
  }
  if (injector?.pressure === 'high' && wax.pressure === 'low only') {
    warnings.push(`${name} is for low pressure only; ${titleOf(shelf, injector)} is a high-pressure injector.`);
  }
  if (injector?.holds && injector.holds !== wax.id) {
    warnings.push(`${titleOf(shelf, injector)} is said to hold ${titleOf(shelf, shelf.things.wax.get(injector.holds))}, not ${name}.`);
  }
  if (waxC !== undefined && wax.injectHighC !== undefined && waxC > wax.injectHighC) {
    warnings.push(`${sayTemperature(waxC, units)} is hotter than the ${sayTemperature(wax.injectHighC, units)} written down for ${name}.`);
  }
  if (waxC !== undefined && wax.injectLowC !== undefined && waxC < wax.injectLowC) {
    warnings.push(`${sayTemperature(waxC, units)} is cooler than the ${sayTemperature(wax.injectLowC, units)} written down for ${name}.`);
  }
  return warnings;
}

function pressureWarnings(shelf: Shelf, injector: Injector | undefined, { pressureKpa, units }: RunChoice): readonly string[] {
  if (pressureKpa === undefined || injector?.maxKpa === undefined || pressureKpa <= injector.maxKpa) return [];
  const [set, most] = [sayPressure(pressureKpa, units), sayPressure(injector.maxKpa, units)];
  return [`${set} is more than the ${most} that ${titleOf(shelf, injector)} is made for.`];
}
