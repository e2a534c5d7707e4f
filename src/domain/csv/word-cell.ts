import { METALS, ROUTES } from '../design.ts';
import { MOULD_FAULTS } from '../fault.ts';
import { fold } from '../folding.ts';
import { GRADES } from '../grade.ts';
import { MASTER_KINDS, MASTER_STATES } from '../master.ts';
import { PURPOSES, RUBBERS } from '../mould.ts';
import { PLACE_FOR, PLACE_KINDS } from '../place.ts';
import { isProblem } from '../problem.ts';
import { RETIREMENTS } from '../retirement.ts';
import { WAX_PRESSURES, WAX_USES } from '../wax.ts';
import { type ReadCell, type Reading, shownCell } from './reading.ts';

type Words<L extends readonly string[]> = { readonly [K in L[number]]?: string };

/** Further words for each value, parted by commas, as lists in the trade write them (common practice, no source). */
function wordsOf<const L extends readonly string[]>(list: L, also: Words<L>): ReadonlyMap<string, string> {
  const known = new Map<string, string>();
  for (const value of list) {
    known.set(fold(value), value);
    for (const word of (also[value as L[number]] ?? '').split(',')) if (word.trim() !== '') known.set(fold(word), value);
  }
  return known;
}

/** A cell whose words must be known ones. The whole cell is tried first, then a known word within it, and that is said; so is a question mark. */
function wordCell(known: ReadonlyMap<string, string>, what: string): ReadCell {
  return (cell) => {
    const words = fold(cell);
    const exact = known.get(words);
    if (exact !== undefined)
      return cell.includes('?') ? { value: exact, doubt: `${shownCell(cell)} is read as ${exact}.` } : { value: exact };
    let best = '';
    for (const word of known.keys()) if (word.length > best.length && word.length > 2 && ` ${words} `.includes(` ${word} `)) best = word;
    const value = known.get(best);
    return value === undefined
      ? { doubt: `${shownCell(cell)} is no ${what} known here.` }
      : { value, doubt: `${shownCell(cell)} is read as ${value}.` };
  };
}

/** Several words in one cell; those not known are left to the note. */
function wordsCell(known: ReadonlyMap<string, string>, what: string): ReadCell {
  const one = wordCell(known, what);
  return (cell): Reading => {
    const readings = cell
      .split(/[,;/|+]|\band\b|\n/i)
      .filter((part) => part.trim() !== '')
      .map((part) => one(part, { today: '' as never }));
    const values = [...new Set(readings.flatMap((each) => ('value' in each && each.value !== undefined ? [each.value] : [])))];
    const doubts = readings.flatMap((each) => ('doubt' in each && each.doubt ? [each.doubt] : []));
    return { ...(values.length > 0 ? { value: values } : {}), ...(doubts.length > 0 ? { doubt: doubts.join(' ') } : {}) };
  };
}

const rubberWord = wordCell(
  wordsOf(RUBBERS, {
    natural: 'natural rubber, nat, nr, gold rubber, gum, gum rubber, pink rubber, latex',
    'vulcanised silicone':
      'vulcanized silicone, htv, htv silicone, heat cured silicone, hot cured silicone, silicone rubber, silicone, silicon, vulc silicone, no shrink silicone, hcr',
    'platinum silicone': 'platinum, plat, platinum rtv, addition cure, addition silicone, rtv platinum, pt silicone',
    'tin silicone': 'tin, tin rtv, condensation, condensation cure, condensation silicone, rtv tin, sn silicone',
  }),
  'rubber',
);

/** What sets without a press, and words that tell a silicone that does not (common practice, no source). */
const ROOM_CURED = /\brtv|\broom temp|\bcold cur/;
const PRESS_CURED = /vulc|\bhtv|\bheat|\bhot\b|\bhcr|\bno shrink/;

/** A rubber by its words. “RTV” alone may be platinum or tin silicone, and “silicone” any of three. */
export const rubberCell: ReadCell = (cell, ways) => {
  const read = rubberWord(cell, ways);
  const words = fold(cell);
  if (isProblem(read) || read.value === 'platinum silicone' || read.value === 'tin silicone') return read;
  if (ROOM_CURED.test(words)) return { doubt: `${shownCell(cell)} is platinum silicone or tin silicone; it does not say which.` };
  if (read.value !== 'vulcanised silicone' || PRESS_CURED.test(words)) return read;
  return { ...read, doubt: `${shownCell(cell)} is read as vulcanised silicone; platinum or tin silicone may be meant.` };
};

/** Grades, and words that mean the mould is out of use: those are read as a retirement's reason, after `retired:`. */
export const gradeCell = wordCell(
  new Map([
    ...wordsOf(GRADES, {
      sound: 'good, ok, okay, fine, new, as new, very good, excellent, perfect, a, 1, usable, in use, working',
      watch: 'fair, keep an eye on, some wear, slight wear, slightly worn, average, so so, b, 2, starting to go, check',
      worn: 'tired, poor, worn down, old, c, 3, nearly finished, used up, bad',
      failed: 'fail, torn, split, broken, unusable, no good, kaput, finished, d, 4, damaged',
    }),
    ...['dud', 'failure', 'never worked'].map((word): [string, string] => [word, 'retired:dud']),
    ...['retired', 'out of use', 'withdrawn', 'not used', 'disused'].map((word): [string, string] => [word, 'retired:not wanted']),
    ...['scrapped', 'scrap', 'worn out', 'thrown away', 'binned'].map((word): [string, string] => [word, 'retired:worn out']),
    ['lost', 'retired:lost'],
    ['replaced', 'retired:replaced'],
  ]),
  'condition',
);

export const faultsCell = wordsCell(
  wordsOf(MOULD_FAULTS, {
    'torn gate': 'gate torn, torn sprue, split gate, torn at gate',
    'torn cavity': 'tear, torn, split, cavity torn',
    flash: 'flashing, fins',
    'shifted halves': 'shift, misaligned, halves shift, offset',
    'bubbles in rubber': 'bubbles, air bubbles',
    sticking: 'sticks, sticky',
    'lost detail': 'detail lost, soft detail, worn detail',
    curled: 'curl, warped',
  }),
  'fault',
);

export const purposeCell = wordCell(
  wordsOf(PURPOSES, {
    production: 'prod, working, final, p, main',
    intermediate: 'inter, in between, master mould, step, for master, i, intermediate step, trial',
  }),
  'purpose',
);

export const routeCell = wordCell(
  wordsOf(ROUTES, {
    'lost wax': 'wax, investment, cire perdue, lw',
    'poured in the mould': 'direct, poured, direct pour, in rubber, into mould, spin, pour in mould',
  }),
  'route',
);
export const metalsCell = wordsCell(
  wordsOf(METALS, {
    pewter: 'tin, lead free pewter, sn',
    bronze: 'cu sn',
    brass: '',
    silver: 'sterling, sterling silver, 925, ag',
    gold: 'au',
  }),
  'metal',
);
export const masterKindCell = wordCell(
  wordsOf(MASTER_KINDS, {
    original: 'orig, find, antique, museum piece',
    carved: 'model, carving, hand carved, carved model, carved wax, hand made, fabricated',
    'dressed wax': 'wax, cleaned wax, repaired wax',
    print: '3d print, resin, printed, 3d printed, resin print, cad',
    casting: 'metal, cast, metal casting, metal master, cast master',
  }),
  'kind of master',
);
export const masterStateCell = wordCell(
  wordsOf(MASTER_STATES, {
    sound: 'good, ok, fine, a',
    worn: 'tired, poor, c',
    broken: 'damaged, cracked, failed, destroyed',
    lost: 'missing, gone',
  }),
  'state of a master',
);
export const placeKindCell = wordCell(
  wordsOf(PLACE_KINDS, {
    room: 'workshop, store, store room, office, studio',
    cabinet: 'cupboard, chest, case, chest of drawers, rack, unit, cab, bookcase',
    drawer: 'tray, dr, drw',
    shelf: 'board, ledge',
    box: 'tin, tub, crate, bin, carton, bag',
    away: 'out, lent, elsewhere',
  }),
  'kind of place',
);
export const placeForCell = wordCell(
  wordsOf(PLACE_FOR, {
    moulds: 'mould, molds, mold, rubbers',
    masters: 'master, originals, models',
    'injected waxes': 'injected wax, wax pieces',
    castings: 'casting, stock, finished',
    wax: 'waxes, injection wax',
    anything: 'mixed, misc, any, all',
  }),
  'use of a place',
);
export const waxUseCell = wordCell(
  wordsOf(WAX_USES, { injecting: 'injection, injection wax, inject', sticky: 'sticky wax, sprue, repair, joining' }),
  'use of a wax',
);
export const waxPressureCell = wordCell(
  wordsOf(WAX_PRESSURES, {
    any: 'all, either, both',
    'needs high': 'high, high pressure, hp, high only',
    'low only': 'low, low pressure, lp, hand',
  }),
  'pressure',
);

export const retirementCell = wordCell(wordsOf(RETIREMENTS, {}), 'reason for being out of use');

const KIND_BY_WORD = wordsOf(PLACE_KINDS, {
  room: 'workshop, store, storeroom, office, studio',
  cabinet: 'cupboard, chest, case, rack, unit, cab, bookcase',
  drawer: 'tray, drw, dr',
  box: 'tin, tub, crate, bin, carton, bag',
});

/** The kind of place that a word of its name tells: “Cabinet A”, “back room”. */
export function kindInName(name: string): string | undefined {
  for (const word of fold(name).split(' ')) {
    const kind = KIND_BY_WORD.get(word);
    if (kind !== undefined) return kind;
  }
  return undefined;
}
