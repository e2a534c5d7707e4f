import { signal } from '@preact/signals';
import type { Deps } from '../actions/deps.ts';
import { LENGTH_UNITS, MASS_UNITS, PRESSURE_UNITS, SI_UNITS, TEMPERATURE_UNITS, type Units } from '../domain/units.ts';
import { useDeps } from './studio.tsx';

function oneOf<T extends string>(list: readonly T[], raw: unknown, otherwise: T): T {
  return list.includes(raw as T) ? (raw as T) : otherwise;
}

const KEPT_AS = 'units';
/** Raised by every choice, so that each screen that shows a figure is drawn again. */
const choices = signal(0);
let last: { readonly raw: string; readonly units: Units } = { raw: '', units: SI_UNITS };

/** The units this device shows figures in; SI until somebody chooses. The very same object until the choice changes. */
export function useUnits(): Units {
  const { settings } = useDeps();
  void choices.value;
  const kept = settings.get<Partial<Record<keyof Units, unknown>>>(KEPT_AS);
  const raw = JSON.stringify(kept ?? null);
  if (raw !== last.raw) {
    last = {
      raw,
      units: {
        mass: oneOf(MASS_UNITS, kept?.mass, SI_UNITS.mass),
        length: oneOf(LENGTH_UNITS, kept?.length, SI_UNITS.length),
        temperature: oneOf(TEMPERATURE_UNITS, kept?.temperature, SI_UNITS.temperature),
        pressure: oneOf(PRESSURE_UNITS, kept?.pressure, SI_UNITS.pressure),
      },
    };
  }
  return last.units;
}

/** Shows every figure in these from now on. What is recorded stays as it is. */
export function chooseUnits({ settings }: Pick<Deps, 'settings'>, units: Units): void {
  settings.set(KEPT_AS, units);
  choices.value++;
}

/** The name a form's draft goes by: figures typed in other units are another draft, lest 20 °C be read as 20 °F. */
export function inUnits(form: string, units: Units): string {
  const chosen = Object.values(units).join(' ');
  return chosen === Object.values(SI_UNITS).join(' ') ? form : `${form} in ${chosen}`;
}
