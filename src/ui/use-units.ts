import { LENGTH_UNITS, MASS_UNITS, PRESSURE_UNITS, SI_UNITS, TEMPERATURE_UNITS, type Units } from '../domain/units.ts';
import { useDeps } from './studio.tsx';

function oneOf<T extends string>(list: readonly T[], raw: unknown, otherwise: T): T {
  return list.includes(raw as T) ? (raw as T) : otherwise;
}

let last: { readonly raw: string; readonly units: Units } = { raw: '', units: SI_UNITS };

/** The units this device shows figures in; SI until somebody chooses. The very same object until the choice changes. */
export function useUnits(): Units {
  const kept = useDeps().settings.get<Partial<Record<keyof Units, unknown>>>('units');
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
