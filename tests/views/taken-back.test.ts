import { expect, test } from 'vitest';
import { SI_UNITS } from '../../src/domain/units.ts';
import { sayTakenBack } from '../../src/views/taken-back.ts';
import { aDesign, aMould, aShelf } from '../support/builders.ts';
import { aFailed, aRecorded } from '../support/entry-builders.ts';

test('what was taken back is said by its own words, although it is out of sight', () => {
  const mould = aMould();
  const shelf = aShelf([mould]);
  const design = aDesign();
  const [bull, heron, drawer] = [
    aRecorded('mould', { name: 'Bull 1' }),
    aRecorded('mould', { name: 'Heron' }),
    aRecorded('place', { name: 'A1' }),
  ];
  expect(sayTakenBack(shelf, [bull], SI_UNITS)).toBe('Recorded: mould “Bull 1”.');
  const unnamed = aRecorded('mould', { design: design.id, size: 'large' });
  expect(sayTakenBack(aShelf([design]), [unnamed], SI_UNITS)).toBe(`Recorded: mould “${design.name}, large”.`);
  expect(sayTakenBack(shelf, [bull, heron, drawer], SI_UNITS)).toBe('Recorded in one go: 1 place, 2 moulds.');
  expect(sayTakenBack(shelf, [aFailed({ of: mould.id, faults: ['flash'] })], SI_UNITS)).toMatch(/^Mould “.+”: failed: flash\.$/);
});
