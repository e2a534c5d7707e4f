import { type Bench, change, clear, defined, sums, total } from './bench.ts';
import type { Day, PlaceId } from './brand.ts';
import { driftAfter } from './drift.ts';
import type { EntryOf } from './entry.ts';
import { withRun } from './run.ts';
import { MONTHS_KEPT, type Run } from './shelf.ts';

export function inject(bench: Bench, entry: EntryOf<'injected'>): void {
  const mould = bench.of('mould', entry.mould);
  if (mould) {
    const rejects = total(entry.rejects);
    const { shots, good, wax, injector, waxC, pressureKpa, holdS, on } = entry;
    const run = { on, good, rejects, ...defined({ wax, injector, waxC, pressureKpa, holdS }) } as Run;
    const drift = driftAfter(mould, run);
    const mine = bench.edit(mould);
    mine['shots'] = mould.shots + shots;
    mine['good'] = mould.good + good;
    mine['rejects'] = mould.rejects + rejects;
    mine['runs'] = withRun(mould.runs ?? [], run);
    if (rejects > 0) mine['byFault'] = sums(mould.byFault, entry.rejects);
    if (drift) mine['drift'] = drift;
    else clear(mine, 'drift');
  }
  if (entry.wax && entry.grams) useWax(bench, entry.wax, entry.grams, entry.on);
  if (entry.good === 0) return;
  if (entry.onto) addPieces(bench, entry.onto, entry.good);
  else if (entry.to) {
    const pile = { id: entry.id, noun: 'injectedWax', since: entry.on, pieces: entry.good, mould: entry.mould, state: 'raw' };
    const named = defined({ design: mould?.design, size: mould?.size, wax: entry.wax });
    lay(bench, { ...pile, ...named }, entry.to, entry.on);
  }
}

function lay(bench: Bench, pile: object, at: PlaceId | undefined, on: Day): void {
  bench.stand(bench.make(pile), at, on);
}

/** Wax leaves the tub for use; the months with any use are kept so that the use over a delivery time can be told. */
function useWax(bench: Bench, id: string, grams: number, on: Day): void {
  const wax = bench.of('wax', id);
  if (!wax) return;
  const month = on.slice(0, 7);
  let used: Record<string, number> = { ...wax.used };
  const before = used[month];
  used[month] = (before ?? 0) + grams;
  if (before === undefined) {
    const months = Object.keys(used).sort().slice(-MONTHS_KEPT);
    used = Object.fromEntries(months.map((each) => [each, used[each] as number]));
  }
  const mine = bench.edit(wax);
  mine['grams'] = wax.grams - grams;
  mine['used'] = used;
}

function addPieces(bench: Bench, id: string, pieces: number): void {
  const pile = bench.pile(id);
  if (pile) bench.edit(pile).pieces = pile.pieces + pieces;
}

export function dress(bench: Bench, entry: EntryOf<'dressed'>): void {
  const raw = bench.of('injectedWax', entry.from);
  addPieces(bench, entry.from, -(entry.good + entry.scrapped));
  if (entry.good === 0) return;
  if (entry.onto) return addPieces(bench, entry.onto, entry.good);
  const pile = { id: entry.id, noun: 'injectedWax', since: entry.on, pieces: entry.good, state: entry.state ?? 'dressed' };
  const named = defined({ mould: raw?.mould, design: raw?.design, size: raw?.size, wax: raw?.wax });
  lay(bench, { ...pile, ...named }, entry.to ?? raw?.at, entry.on);
}

export function invest(bench: Bench, entry: EntryOf<'invested'>): void {
  for (const lot of entry.waxes) addPieces(bench, lot.from, -lot.pieces);
  change(bench, bench.of('flask', entry.flask), { invested: { on: entry.on, waxes: entry.waxes } });
}

export function cast(bench: Bench, entry: EntryOf<'cast'>): void {
  const scrap = total(entry.scrap);
  const mould = entry.mould ? bench.of('mould', entry.mould) : undefined;
  if (mould) change(bench, mould, { sound: (mould.sound ?? 0) + entry.sound, scrap: (mould.scrap ?? 0) + scrap });
  const flask = entry.flask ? bench.of('flask', entry.flask) : undefined;
  if (flask) clear(bench.edit(flask), 'invested');
  const onto = entry.onto ? bench.of('casting', entry.onto) : undefined;
  const scrapFields = (before: { readonly [key: string]: number } | undefined) => (scrap > 0 ? { scrap: sums(before, entry.scrap) } : {});
  if (entry.onto) return change(bench, onto, { pieces: (onto?.pieces ?? 0) + entry.sound, ...scrapFields(onto?.scrap) });
  const { metal, mould: from, flask: inFlask, design = mould?.design, size = mould?.size } = entry;
  const pile = { id: entry.id, noun: 'casting', since: entry.on, pieces: entry.sound, metal, ...scrapFields(undefined) };
  const named = defined({ mould: from, flask: inFlask, design, size });
  lay(bench, { ...pile, ...named }, entry.to, entry.on);
}

export function issue(bench: Bench, entry: EntryOf<'issued'>): void {
  const thing = bench.get(entry.of);
  if (thing?.noun === 'wax' && entry.grams) return change(bench, thing, { grams: thing.grams - entry.grams });
  if (!entry.pieces) return;
  if (thing?.noun === 'injectedWax') return change(bench, thing, { pieces: thing.pieces - entry.pieces });
  if (thing?.noun !== 'casting') return;
  change(bench, thing, { pieces: thing.pieces - entry.pieces, issued: sums(thing.issued, { [entry.reason]: entry.pieces }) });
}
