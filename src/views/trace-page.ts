import type { ThingId } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import { doubtInWords } from '../domain/doubt.ts';
import type { Pool } from '../domain/lineage/pool.ts';
import type { Trace } from '../domain/lineage/trace.ts';
import { sayCount } from '../domain/measure-words.ts';
import { pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import { type Mould, type Shelf, thingOf } from '../domain/shelf.ts';
import { designAndSize, titleOf } from '../domain/title.ts';
import type { ListOut } from './list-out.ts';

export interface TraceLine {
  readonly key: string;
  /** The thing to go to; absent for what is no longer recorded. */
  readonly thing?: { readonly id: ThingId; readonly noun: Noun };
  readonly title: string;
  /** “all 12”, “up to 5 of 12”. */
  readonly pieces: string;
  readonly isCertain: boolean;
  readonly where: string;
}

export interface TraceGroup {
  readonly heading: string;
  readonly lines: readonly TraceLine[];
}

export interface TracePage {
  readonly says: string;
  readonly groups: readonly TraceGroup[];
  /** Piles and flasks that can be marked for a look. */
  readonly marks: readonly { readonly id: ThingId; readonly least: number; readonly most: number }[];
  readonly list: ListOut;
}

/** A trace as it is read: what is on hand, in flasks, gone, and made a master of. `from` says since when, for the list's title. */
export function tracePageOf(shelf: Shelf, mould: Mould, trace: Trace, from: string): TracePage {
  const marks: TracePage['marks'][number][] = [];
  const waxes: TraceLine[] = [];
  const castings: TraceLine[] = [];
  for (const [id, pool] of trace.piles) {
    const pile = thingOf(shelf, id);
    if ((pile?.noun !== 'injectedWax' && pile?.noun !== 'casting') || pile.retired || pile.pieces <= 0) continue;
    const line = lineOf(shelf, id, pool, pile.pieces);
    (pile.noun === 'casting' ? castings : waxes).push(line);
    marks.push({ id: pile.id, ...within(pool, pile.pieces) });
  }
  const flasks: TraceLine[] = [];
  for (const [id, pool] of trace.flasks) {
    const flask = thingOf(shelf, id);
    if (flask?.noun !== 'flask' || !flask.invested) continue;
    flasks.push(lineOf(shelf, id, pool, pool.total));
    marks.push({ id: flask.id, least: pool.least, most: pool.most });
  }
  const gone = trace.gone.map((each, at): TraceLine => {
    const where = [each.reason, each.to ? `to ${each.to}` : '', `on ${dayInWords(each.on)}`].filter(Boolean).join(' ');
    return { ...lineOf(shelf, each.of, each.pool, each.pool.total), key: `gone ${at}`, where };
  });
  const masters = trace.masters.map((id) => ({ ...lineOf(shelf, id, { total: 1, least: 0, most: 1 }, 1), pieces: 'made of its waxes' }));
  const groups = [
    { heading: 'Injected waxes on hand', lines: waxes },
    { heading: 'In flasks', lines: flasks },
    { heading: 'Castings on hand', lines: castings },
    { heading: 'Gone', lines: gone },
    { heading: 'Masters made of its waxes', lines: masters },
  ].filter(({ lines }) => lines.length > 0);
  const title = `What came from ${titleOf(shelf, mould)}, ${from}`;
  return { says: summary(trace, groups.length > 0), groups, marks, list: listOf(title, groups) };
}

function within({ least, most }: Pool, pieces: number): { readonly least: number; readonly most: number } {
  return { least: Math.min(least, pieces), most: Math.min(most, pieces) };
}

function lineOf(shelf: Shelf, id: string, pool: Pool, pieces: number): TraceLine {
  const thing = thingOf(shelf, id);
  const kind = thing?.noun === 'casting' ? [thing.metal] : thing?.noun === 'injectedWax' ? [thing.state ?? 'raw'] : [];
  const named = thing && 'design' in thing ? designAndSize(shelf, thing.design, thing.size) : undefined;
  const isNamed = named !== undefined && thing?.name !== undefined && thing.name !== named;
  return {
    key: id,
    ...(thing ? { thing: { id: thing.id, noun: thing.noun } } : {}),
    title: [titleOf(shelf, thing), ...(isNamed ? [named] : []), ...kind].filter(Boolean).join(', '),
    pieces: doubtInWords(within(pool, pieces), pieces),
    isCertain: pool.least > 0,
    where: pathText(shelf, thing?.at) || (thing?.noun === 'flask' ? 'invested' : 'no place'),
  };
}

function summary({ made, nowhere, scrap }: Trace, hasFound: boolean): string {
  const out = scrap.most > 0 ? ` Up to ${sayCount(scrap.most, 'piece')} went out as scrap.` : '';
  if (made.most === 0) return `None of its logged runs is in doubt${hasFound ? '; these are recorded as its own.' : '.'}${out}`;
  const count = made.least === made.most ? sayCount(made.most, 'good wax', 'good waxes') : `${made.least} to ${made.most} good waxes`;
  const loose = nowhere.most > 0 ? ` ${sayCount(nowhere.most, 'wax', 'waxes')} of them were counted and stand nowhere.` : '';
  return `${count} came from its doubtful shots.${loose}${out}`;
}

function listOf(title: string, groups: readonly TraceGroup[]): ListOut {
  return {
    title,
    headings: ['What', 'Name', 'Pieces', 'How sure', 'Where'],
    rows: groups.flatMap(({ heading, lines }) =>
      lines.map((line) => [heading, line.title, line.pieces, line.isCertain ? 'from it' : 'may be from it', line.where]),
    ),
  };
}
