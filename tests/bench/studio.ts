import type { Day, EntryId } from '../../src/domain/brand.ts';
import { makeEntryId } from '../../src/domain/clock.ts';
import { toBase32 } from '../../src/domain/crockford.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { makeCode } from '../../src/domain/label.ts';
import type { Noun } from '../../src/domain/noun.ts';
import { chance } from '../support/chance.ts';

/** How big a made-up studio is to be; the same seed gives the same studio. */
export interface StudioSize {
  readonly things: number;
  readonly moulds: number;
  readonly entries: number;
  readonly seed: number;
}

const FIRST_MS = Date.UTC(2020, 0, 6, 8);
const YEARS_MS = 5 * 365 * 86_400_000;
const DEVICES = ['BENCH0', 'BENCH1'] as const;
const BEASTS = [
  'bull',
  'heron',
  'octopus',
  'lion',
  'dolphin',
  'hound',
  'crane',
  'ram',
  'owl',
  'bee',
  'hare',
  'serpent',
  'stag',
  'crab',
  'falcon',
];
const SORTS = ['seal', 'toggle', 'brooch', 'harness mount', 'pendant', 'gaming piece', 'signet ring', 'buckle', 'hinge', 'finial'];
const PERIODS = [
  'Minoan',
  'Etruscan',
  'La Tène',
  'Hellenistic',
  'Coptic',
  'Carolingian',
  'Ottoman',
  'Georgian',
  'Art Nouveau',
  'stage props',
];
const RUBBERS = ['natural', 'vulcanised silicone', 'platinum silicone', 'tin silicone'] as const;
const SIZES = ['small', 'medium', 'large'] as const;

/** Writes one entry after another, evenly over five years, and remembers the things recorded. */
class Book {
  readonly entries: Entry[] = [];
  readonly ids = new Map<Noun, EntryId[]>();
  private readonly stepMs: number;
  private codes = 0;
  private readonly next: () => number;

  constructor(size: StudioSize) {
    this.stepMs = Math.max(1, Math.floor(YEARS_MS / size.entries));
    this.next = chance(size.seed);
  }

  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  one<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T;
  }

  thing(noun: Noun): EntryId {
    return this.one(this.ids.get(noun) ?? []);
  }

  write(kind: string, body: object): EntryId {
    const ms = FIRST_MS + this.entries.length * this.stepMs;
    const id = makeEntryId({ ms, count: 0 }, DEVICES[this.entries.length % 7 === 0 ? 1 : 0]);
    const on = new Date(ms).toISOString().slice(0, 10) as Day;
    this.entries.push({ kind, id, on, ...body } as unknown as Entry);
    return id;
  }

  record(noun: Noun, fields: object, more: object = {}): EntryId {
    const id = this.write('recorded', { noun, fields: { code: this.code(noun), ...fields }, ...more });
    const known = this.ids.get(noun);
    if (known) known.push(id);
    else this.ids.set(noun, [id]);
    return id;
  }

  /** Codes all over the place, none twice: an odd factor only shuffles the numbers below 2³⁰. */
  private code(noun: Noun): string {
    for (;;) {
      this.codes += 1;
      const code = makeCode(noun, toBase32((this.codes * 48_271) % 2 ** 30, 6));
      if (code) return code;
    }
  }
}

/** 40 cabinets of 20 to 30 drawers for 20,000 things, and as many fewer as there are fewer things. */
function furnish(book: Book, size: StudioSize): EntryId[] {
  const room = book.record('place', { name: 'Workshop', kind: 'room' });
  const drawers: EntryId[] = [];
  const cabinets = Math.max(2, Math.round(size.things / 500));
  for (let c = 0; c < cabinets; c++) {
    const inside = book.record('place', { name: `Cabinet ${c + 1}`, kind: 'cabinet', in: room, widthMm: 900, heightMm: 1200, order: c });
    const rows = book.whole(4, 6);
    for (let d = 0; d < rows * 5; d++) {
      const box = { x: (d % 5) * 180, y: Math.floor(d / 5) * (1200 / rows), w: 175, h: 1200 / rows - 5 };
      const periods = [book.thing('period')];
      const name = `Drawer ${c + 1}-${d + 1}`;
      drawers.push(book.record('place', { name, kind: 'drawer', in: inside, box, periods, capacity: book.whole(10, 40), order: d }));
    }
  }
  return drawers;
}

function stock(book: Book, size: StudioSize): void {
  for (const [i, name] of PERIODS.entries()) book.record('period', i < 9 ? { name, from: -2000 + i * 420, to: -1600 + i * 420 } : { name });
  const drawers = furnish(book, size);
  for (let w = 0; w < 6; w++) {
    const range = { roomLowC: 8 + w * 2, roomHighC: 22 + w * 2, injectLowC: 60 + w, injectHighC: 70 + w };
    book.record('wax', { name: `Wax ${w + 1}`, use: 'injecting', deliveryDays: 14, keepGrams: 1000, ...range }, { grams: 5000 });
  }
  for (let i = 0; i < 3; i++) book.record('injector', { name: `Injector ${i + 1}`, pressure: 'low', holds: book.thing('wax') });
  const designs = Math.round(size.things / 10);
  for (let i = 0; i < designs; i++) {
    const name = `${BEASTS[i % 15]} ${SORTS[Math.floor(i / 15) % 10]} ${Math.floor(i / 150) + 1}`;
    const sizes = SIZES.map((label, s) => ({ label, mm: 12 + s * 7 }));
    book.record('design', {
      name,
      sort: SORTS[Math.floor(i / 15) % 10],
      periods: [book.thing('period')],
      sizes,
      metals: ['bronze', 'pewter'],
      keep: 10,
    });
  }
  const left = size.things - size.moulds - book.entries.length;
  const masters = Math.round(left * 0.4);
  const piles = Math.round(left * 0.3);
  const named = () => ({ design: book.thing('design'), size: book.one(SIZES) });
  const stands = () => ({ at: book.one(drawers) });
  for (let i = 0; i < masters; i++)
    book.record('master', { ...named(), kind: 'carved', state: 'sound', lengthMm: book.whole(9, 60) }, stands());
  for (let i = 0; i < size.moulds; i++) {
    const made = {
      rubber: book.one(RUBBERS),
      purpose: 'production',
      cavities: book.whole(1, 6),
      made: '2019-11-05',
      shotGrams: book.whole(4, 40),
    };
    book.record('mould', { ...named(), ...made, master: book.thing('master'), wax: book.thing('wax') }, stands());
  }
  for (let i = 0; i < piles; i++) book.record('injectedWax', { ...named(), state: 'raw' }, { ...stands(), pieces: book.whole(0, 40) });
  while (book.entries.length < size.things)
    book.record('casting', { ...named(), metal: 'bronze' }, { ...stands(), pieces: book.whole(0, 40) });
}

function injected(book: Book) {
  const shots = book.whole(2, 30);
  const rejects = book.whole(0, 2) === 0 ? { bubbles: 1, 'short fill': book.whole(1, 2) } : {};
  const settings = { wax: book.thing('wax'), injector: book.thing('injector'), waxC: 66, pressureKpa: 50, holdS: 6, grams: shots * 8 };
  return { mould: book.thing('mould'), shots, good: shots - 1, rejects, ...settings, onto: book.thing('injectedWax') };
}

function happening(book: Book): void {
  const die = book.whole(1, 100);
  const mould = book.thing('mould');
  const place = book.thing('place');
  if (die <= 50) book.write('injected', injected(book));
  else if (die <= 65)
    book.write('moved', { things: [book.one([mould, book.thing('master')])], to: place, usual: book.one(['kept', 'changed']) });
  else if (die <= 75)
    book.write('inspected', { of: mould, grade: book.one(['sound', 'sound', 'watch', 'worn']), faults: ['flash'], note: 'a little flash' });
  else if (die <= 78) book.write('failed', { of: mould, faults: ['torn gate'] });
  else if (die <= 82)
    book.write('corrected', { noun: 'mould', of: mould, fields: { note: `keep with tray ${die}`, expectedShots: book.whole(80, 400) } });
  else if (die <= 85) book.write('received', { wax: book.thing('wax'), grams: 2500 });
  else if (die <= 87) book.write('weighed', { wax: book.thing('wax'), grams: book.whole(500, 6000) });
  else if (die <= 90) book.write('counted', { of: book.thing('casting'), pieces: book.whole(0, 60) });
  else if (die <= 93) book.write('dressed', { from: book.thing('injectedWax'), good: 4, scrapped: 1, onto: book.thing('injectedWax') });
  else if (die <= 96)
    book.write('cast', { metal: 'bronze', sound: book.whole(1, 12), scrap: { porosity: 1 }, mould, onto: book.thing('casting') });
  else if (die <= 98) book.write('issued', { of: book.thing('casting'), pieces: book.whole(1, 5), reason: 'sold' });
  else if (die === 99) book.write('measured', { of: book.thing('master'), sizes: [{ name: 'length', mm: book.whole(9, 60) }], roomC: 19 });
  else book.write('withdrawn', { entry: (book.entries.at(-book.whole(1, 5)) as Entry).id });
}

/** A studio of exactly so many things and entries, as the journal it would have written. */
export function bigStudio(size: StudioSize): Entry[] {
  const book = new Book(size);
  stock(book, size);
  while (book.entries.length < size.entries) happening(book);
  return book.entries;
}
