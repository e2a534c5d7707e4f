import type { Celsius, Grams, InjectorId, Kilopascals, MouldId, WaxId } from '../domain/brand.ts';
import { WAX_FAULTS, type WaxFault } from '../domain/fault.ts';
import { PRESSURE_WORD } from '../domain/injector.ts';
import { sayMass, sayTemperatures } from '../domain/measure-words.ts';
import { mouldWarnings } from '../domain/plans/run-warnings.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { smallerThanLabel } from '../domain/size/expected.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { settingsThatWork } from './mould-facts.ts';
import { smallerSays } from './size-page.ts';

export interface RunForm {
  readonly title: string;
  readonly cavities: number;
  readonly shots: number;
  /** Why this mould should not be picked. */
  readonly warnings: readonly string[];
  /** That its castings come out a size smaller than the label. */
  readonly smaller?: string;
  readonly waxes: readonly { readonly id: WaxId; readonly word: string }[];
  readonly injectors: readonly { readonly id: InjectorId; readonly word: string }[];
  /** The faults this mould is known for first, then the common ones. */
  readonly faults: readonly WaxFault[];
  /** How many of them to show at once. */
  readonly shown: number;
  readonly offered: Offered;
}

/** What last time's run, or the mould's own settings, suggest. */
export interface Offered {
  readonly from?: string;
  readonly wax?: WaxId;
  readonly injector?: InjectorId;
  readonly waxC?: Celsius;
  readonly pressureKpa?: Kilopascals;
  readonly holdS?: number;
  readonly to?: string;
}

const SHOWN = 4;
/** Common practice, no source: what a caster throws waxes out for most. */
const COMMON: readonly WaxFault[] = ['short fill', 'bubbles', 'flash', 'broken'];

export function runFormOf(shelf: Shelf, id: MouldId, units: Units): RunForm | undefined {
  const mould = shelf.things.mould.get(id);
  if (!mould) return undefined;
  const offered = offeredFor(shelf, mould);
  const smaller = smallerThanLabel(shelf, mould);
  return {
    title: titleOf(shelf, mould),
    cavities: mould.cavities ?? 1,
    shots: mould.shots,
    warnings: mouldWarnings(mould),
    ...(smaller ? { smaller: smallerSays(smaller, units) } : {}),
    waxes: [...shelf.things.wax.values()]
      .filter((wax) => (!wax.retired && wax.use !== 'sticky') || wax.id === offered.wax)
      .map((wax) => ({ id: wax.id, word: `${titleOf(shelf, wax)} · ${leftOf(wax.grams as Grams, units)}${rangeOf(wax, units)}` })),
    injectors: [...shelf.things.injector.values()]
      .filter((injector) => !injector.retired)
      .map((injector) => ({
        id: injector.id,
        word: [titleOf(shelf, injector), injector.pressure && PRESSURE_WORD[injector.pressure], holdsOf(shelf, injector.holds)]
          .filter(Boolean)
          .join(' · '),
      })),
    faults: faultsFor(mould),
    shown: Math.max(SHOWN, Object.keys(mould.byFault ?? {}).length),
    offered,
  };
}

const holdsOf = (shelf: Shelf, id: WaxId | undefined) => {
  const wax = id && shelf.things.wax.get(id);
  return wax && `holds ${titleOf(shelf, wax)}`;
};

const leftOf = (grams: Grams, units: Units) => (grams > 0 ? `${sayMass(grams, units)} left` : 'none left');

function rangeOf(wax: { readonly injectLowC?: Celsius; readonly injectHighC?: Celsius }, units: Units): string {
  return wax.injectLowC === undefined || wax.injectHighC === undefined
    ? ''
    : ` · ${sayTemperatures(wax.injectLowC, wax.injectHighC, units)}`;
}

function faultsFor(mould: Mould): readonly WaxFault[] {
  const known = (Object.entries(mould.byFault ?? {}) as [WaxFault, number][]).sort((a, b) => b[1] - a[1]).map(([fault]) => fault);
  return [...new Set([...known, ...COMMON, ...WAX_FAULTS])];
}

function offeredFor(shelf: Shelf, mould: Mould): Offered {
  const settings = settingsThatWork(mould);
  const last = mould.runs?.at(-1);
  const pile = [...shelf.things.injectedWax.values()].filter((each) => each.mould === mould.id && each.state === 'raw' && each.at).at(-1);
  const wax = last?.wax ?? settings?.wax;
  return {
    ...(settings ? { from: settings.from } : {}),
    ...(wax && shelf.things.wax.has(wax) ? { wax } : {}),
    ...(last?.injector && shelf.things.injector.has(last.injector) ? { injector: last.injector } : {}),
    ...settings?.injection,
    ...(pile?.at ? { to: pile.at } : {}),
  };
}
