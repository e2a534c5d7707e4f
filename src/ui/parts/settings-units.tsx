import { LENGTH_UNITS, MASS_UNITS, PRESSURE_UNITS, TEMPERATURE_UNITS, type Units } from '../../domain/units.ts';
import { useDeps } from '../studio.tsx';
import { chooseUnits, useUnits } from '../use-units.ts';
import { Choices } from './field.tsx';

const QUANTITIES: readonly { readonly quantity: keyof Units; readonly legend: string; readonly units: readonly string[] }[] = [
  { quantity: 'mass', legend: 'Weights', units: MASS_UNITS },
  { quantity: 'length', legend: 'Lengths', units: LENGTH_UNITS },
  { quantity: 'temperature', legend: 'Temperatures', units: TEMPERATURE_UNITS },
  { quantity: 'pressure', legend: 'Pressures', units: PRESSURE_UNITS },
];
const WORD: Readonly<Record<string, string>> = { dwt: 'dwt (pennyweight)', 'oz t': 'oz t (troy ounce)', oz: 'oz (ounce)' };

/** What figures are shown and typed in on this device. */
export function UnitsCard() {
  const deps = useDeps();
  const chosen = useUnits();
  return (
    <section class="card">
      <h2>Units</h2>
      <p>What this device shows figures in, and takes them in. What is recorded stays as it is.</p>
      {QUANTITIES.map(({ quantity, legend, units }) => (
        <Choices
          key={quantity}
          legend={legend}
          options={units.map((unit) => ({ value: unit, word: WORD[unit] ?? unit }))}
          picked={[chosen[quantity]]}
          onPick={([unit]) => chooseUnits(deps, { ...chosen, [quantity]: unit ?? chosen[quantity] })}
        />
      ))}
    </section>
  );
}
