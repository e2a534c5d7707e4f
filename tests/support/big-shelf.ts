import type { Shelf } from '../../src/domain/shelf.ts';
import { idOf, type Made, shelfOf } from './shelf-of.ts';

const SORTS = ['seal', 'toggle', 'brooch', 'mount', 'pendant', 'gaming piece', 'signet ring', 'buckle', 'hinge', 'finial'];
const WORDS = [
  'bull',
  'heron',
  'octopus',
  'spiral',
  'laurel',
  'lion',
  'ivy',
  'double axe',
  'dolphin',
  'wheatear',
  'palmette',
  'knot',
  'crescent',
  'hound',
  'poppy',
];
const PERIODS = ['Minoan', 'Etruscan', 'La Tène', 'Hellenistic', 'Coptic', 'Carolingian', 'Ottoman', 'Georgian', 'Art Nouveau'];

/** A studio of 20,000 things in 1,000 drawers: 5,000 of them moulds. */
export function bigShelf(): Shelf {
  const made: Made[] = [];
  for (const [at, name] of PERIODS.entries()) made.push({ noun: 'period', is: name, name, from: -2000 + at * 400, to: -1600 + at * 400 });
  for (let cabinet = 0; cabinet < 40; cabinet++) {
    made.push({ noun: 'place', is: `cabinet ${cabinet}`, kind: 'cabinet', name: `Cabinet ${cabinet}`, widthMm: 900, heightMm: 1200 });
    for (let drawer = 0; drawer < 25; drawer++) {
      const box = { x: (drawer % 5) * 180, y: Math.floor(drawer / 5) * 240, w: 170, h: 230 };
      const periods = [idOf(PERIODS[(cabinet * 25 + drawer) % 9] as string)];
      made.push({
        noun: 'place',
        is: `drawer ${cabinet * 25 + drawer}`,
        kind: 'drawer',
        name: `Drawer ${cabinet}-${drawer}`,
        in: idOf(`cabinet ${cabinet}`),
        box,
        periods,
      });
    }
  }
  for (let i = 0; i < 2000; i++) {
    const name = `${WORDS[i % 15]} ${SORTS[Math.floor(i / 15) % 10]} ${Math.floor(i / 150)}`;
    made.push({ noun: 'design', is: `design ${i}`, name, sort: SORTS[i % 10], periods: [idOf(PERIODS[i % 9] as string)] });
  }
  for (let i = 0; i < 20; i++) made.push({ noun: 'wax', is: `wax ${i}`, name: `Wax ${i}`, colour: 'amber', at: 'drawer 3' });
  const rest = [
    ['mould', 5000],
    ['master', 4000],
    ['injectedWax', 3000],
    ['casting', 4931],
  ] as const;
  for (const [noun, count] of rest) {
    for (let i = 0; i < count; i++) {
      const note = i % 3 === 0 ? 'gate cut twice, keep the two halves banded together' : 'from the second tray';
      made.push({
        noun,
        is: `${noun} ${i}`,
        design: idOf(`design ${i % 2000}`),
        size: `${12 + (i % 20)} mm`,
        at: `drawer ${i % 1000}`,
        wax: idOf(`wax ${i % 20}`),
        note,
        grade: i % 11 === 0 ? 'failed' : 'sound',
      });
    }
  }
  return shelfOf(made);
}
