import { cast, dress, inject, invest, issue } from './apply-work.ts';
import { Bench, change, clear, defined, type Mine } from './bench.ts';
import type { Sha256, ThingId } from './brand.ts';
import type { Corrected, Entry, EntryOf, Recorded } from './entry.ts';
import type { Shelf } from './shelf.ts';
import { withReadings } from './size/reading.ts';
import { through } from './slices.ts';
import { subjectOf } from './subject.ts';

/** Entries about a thing that is not there (its recording was taken back, or has not arrived) change nothing. */
export function apply(base: Shelf, entries: readonly Entry[]): Shelf {
  return through(applyInSlices(base, entries));
}

/** Entries of one slice: a few milliseconds on a phone. */
export const SLICE = 500;

export function* applyInSlices(base: Shelf, entries: readonly Entry[]): Generator<void, Shelf> {
  if (entries.length === 0) return base;
  const bench = new Bench(base);
  for (let i = 0; i < entries.length; i++) {
    if (i > 0 && i % SLICE === 0) yield;
    const entry = entries[i] as Entry;
    applyOne(bench, entry);
    if (entry.pictures) addPictures(bench, entry);
  }
  return bench.done(entries.length);
}

function applyOne(bench: Bench, entry: Entry): void {
  switch (entry.kind) {
    case 'recorded':
      return record(bench, entry);
    case 'corrected':
      return correct(bench, entry);
    case 'moved':
      return move(bench, entry);
    case 'injected':
      return inject(bench, entry);
    case 'inspected':
      return judge(bench, entry.of, entry.grade, entry.faults ?? [], entry);
    case 'failed':
      return judge(bench, entry.of, 'failed', entry.faults, entry);
    case 'retired':
      return change(bench, bench.get(entry.of), { retired: { on: entry.on, reason: entry.reason } });
    case 'received':
      return addGrams(bench, entry.wax, entry.grams);
    case 'weighed':
      return change(bench, bench.of('wax', entry.wax), { grams: entry.grams, weighedOn: entry.on });
    case 'counted':
      return count(bench, entry);
    case 'dressed':
      return dress(bench, entry);
    case 'invested':
      return invest(bench, entry);
    case 'cast':
      return cast(bench, entry);
    case 'measured':
      return measure(bench, entry);
    case 'issued':
      return issue(bench, entry);
    case 'withdrawn':
      return;
  }
}

function record(bench: Bench, entry: Recorded): void {
  const start: Record<string, unknown> = { id: entry.id, noun: entry.noun, since: entry.on };
  if (entry.noun === 'mould') Object.assign(start, { shots: 0, good: 0, rejects: 0 });
  if (entry.noun === 'wax') start['grams'] = entry.grams ?? 0;
  if (entry.noun === 'injectedWax' || entry.noun === 'casting') start['pieces'] = entry.pieces ?? 0;
  const thing = bench.make({ ...start, ...entry.fields });
  if (entry.at !== undefined) bench.stand(thing, entry.at, entry.on);
}

function correct(bench: Bench, entry: Corrected): void {
  if (entry.noun === 'studio') {
    const { months, life, allowance, ...plain } = entry.fields;
    const before = bench.studio;
    bench.studio = {
      ...before,
      ...plain,
      ...(months ? { months: { ...before.months, ...months } } : {}),
      ...(life ? { life: { ...before.life, ...life } } : {}),
      ...(allowance ? { allowance: { ...before.allowance, ...allowance } } : {}),
    };
    return;
  }
  const thing = bench.of(entry.noun, entry.of);
  if (!thing) return;
  const mine = bench.edit(thing);
  assign(mine, entry.fields);
  if (entry.without) takeOff(mine, entry.without);
  if (entry.first) putFirst(mine, entry.first);
  if (entry.aside) {
    const aside = Object.entries({ ...thing.aside, ...entry.aside }).filter(([, until]) => until !== null);
    if (aside.length > 0) mine['aside'] = Object.fromEntries(aside);
    else clear(mine, 'aside');
  }
}

function takeOff(mine: Mine, gone: readonly Sha256[]): void {
  for (const list of ['pictures', 'looks'] as const) {
    const left = mine[list]?.filter((picture) => !gone.includes(picture));
    if (left && left.length > 0) mine[list] = left;
    else clear(mine, list);
  }
}

/** A picture that is not on the thing (any more) changes nothing. */
function putFirst(mine: Mine, first: Sha256): void {
  const { pictures = [], looks = [] } = mine;
  if (!pictures.includes(first) && !looks.includes(first)) return;
  takeOff(mine, [first]);
  mine.pictures = [first, ...(mine.pictures ?? [])];
}

function assign(mine: Mine, changes: object): void {
  for (const [field, value] of Object.entries(changes)) mine[field] = value ?? undefined;
}

function move(bench: Bench, entry: EntryOf<'moved'>): void {
  for (const id of entry.things) {
    const thing = bench.get(id);
    if (!thing) continue;
    const usual = entry.usual === 'kept' ? (thing.usual ?? thing.at) : undefined;
    const mine = bench.stand(thing, entry.to, entry.on);
    if (usual !== undefined && usual !== entry.to) mine.usual = usual;
    else clear(mine, 'usual');
    if (entry.until) mine.until = entry.until;
  }
}

function judge(
  bench: Bench,
  of: ThingId,
  grade: EntryOf<'inspected'>['grade'],
  faults: EntryOf<'failed'>['faults'],
  entry: EntryOf<'inspected' | 'failed'>,
): void {
  const thing = bench.of('mould', of) ?? bench.of('master', of);
  if (!thing) return;
  const mine = bench.edit(thing);
  // A look settles what was drifting: the next runs are judged afresh.
  clear(mine, 'gradeNote', 'nextLook', 'drift');
  const nextLook = entry.kind === 'inspected' ? entry.next : undefined;
  Object.assign(mine, { grade, gradeOn: entry.on, faults }, defined({ gradeNote: entry.note, nextLook }));
}

function addGrams(bench: Bench, id: string, grams: number): void {
  const wax = bench.of('wax', id);
  change(bench, wax, { grams: (wax?.grams ?? 0) + grams });
}

function count(bench: Bench, entry: EntryOf<'counted'>): void {
  change(bench, bench.pile(entry.of), { pieces: entry.pieces, countedOn: entry.on });
}

function measure(bench: Bench, entry: EntryOf<'measured'>): void {
  const thing = bench.get(entry.of);
  if (!thing) return;
  const before = thing.measured;
  const sizes = entry.sizes ? withReadings(before?.sizes ?? [], entry.sizes) : before?.sizes;
  change(bench, thing, { measured: { on: entry.on, ...defined({ sizes, grams: entry.grams ?? before?.grams }) } });
}

function addPictures(bench: Bench, entry: Entry): void {
  const id = subjectOf(entry);
  const thing = id === undefined ? undefined : bench.get(id);
  if (!thing) return;
  const shown = thing.pictures ?? [];
  const added = (entry.pictures ?? []).filter((picture) => !shown.includes(picture));
  if (added.length === 0) return;
  if (entry.kind === 'recorded' || entry.kind === 'corrected' || thing.id === (entry.id as string)) {
    return change(bench, thing, { pictures: [...shown, ...added] });
  }
  const looks = thing.looks ?? [];
  const fresh = added.filter((picture) => !looks.includes(picture));
  if (fresh.length > 0) change(bench, thing, { looks: [...looks, ...fresh] });
}
