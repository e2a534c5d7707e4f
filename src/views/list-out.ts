import type { Day, ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import type { Level } from '../domain/flag.ts';
import { namesText } from '../domain/nesting.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import { SI_UNITS, type Units } from '../domain/units.ts';
import { attentionList } from './attention-list.ts';
import { countsInWords, markInWords } from './front-words.ts';
import type { CabinetFront } from './fronts.ts';
import { historyOf } from './history.ts';
import type { Row } from './place-page.ts';
import { waxToday } from './wax-today.ts';
import { whereIs } from './where-is.ts';

/** A list to be taken away: what the screen shows, as words in cells. Each row is as wide as the headings. */
export interface ListOut {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Which list a screen shows. */
export type Shown =
  | { readonly of: 'rows'; readonly title: string; readonly rows: readonly Row[] }
  | { readonly of: 'answers'; readonly query: string }
  | { readonly of: 'attention' }
  | { readonly of: 'drawers'; readonly cabinet: CabinetFront }
  | { readonly of: 'waxes'; readonly roomC: number | undefined }
  | { readonly of: 'history'; readonly thing: ThingId }
  | ({ readonly of: 'table' } & ListOut);

const LEVEL_WORD: Readonly<Record<Level, string>> = { act: 'now', soon: 'before long', note: 'good to know' };
/** Answers of a search that go out, those beyond the screen's first sixty too. */
const ALL = 50_000;

/** The list as the screen's own view tells it, in the studio's units; `entries` are a thing's history, for that list only. */
export function listOut(shelf: Shelf, today: Day, shown: Shown, entries: readonly Entry[] = [], units: Units = SI_UNITS): ListOut {
  switch (shown.of) {
    case 'rows':
      return rowsOut(shown.title, shown.rows);
    case 'answers':
      return answersOut(shelf, shown.query, units);
    case 'attention':
      return attentionOut(shelf, today, units);
    case 'drawers':
      return drawersOut(shown.cabinet);
    case 'waxes':
      return waxesOut(shelf, today, shown.roomC, units);
    case 'history':
      return historyOut(shelf, shown.thing, entries, units);
    case 'table':
      return shown;
  }
}

function rowsOut(title: string, rows: readonly Row[]): ListOut {
  return {
    title,
    headings: ['Name', 'What it is', 'State', 'Needs attention', 'Stands in'],
    rows: rows.map((row) => [
      row.title,
      row.detail,
      row.states.map(({ word }) => word).join(', '),
      row.flags.map(({ says, level }) => `${LEVEL_WORD[level]}: ${says}`).join(' '),
      row.place,
    ]),
  };
}

function answersOut(shelf: Shelf, query: string, units: Units): ListOut {
  const { periods, things } = whereIs(shelf, query, units, ALL);
  const ofPeriods = periods.flatMap(({ name, span, places }) =>
    places.map(({ names, isAssigned, pieces }) => [
      [name, span].filter(Boolean).join(', '),
      isAssigned ? 'period kept there' : 'period, things of it stand there',
      pieces > 0 ? `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}` : '',
      namesText(names),
    ]),
  );
  const ofThings = things.map(({ title, detail, states, place }) => [title, detail, states.map(({ word }) => word).join(', '), place]);
  return {
    title: `Where is… ${query.trim()}`,
    headings: ['Name', 'What it is', 'State', 'Stands in'],
    rows: [...ofPeriods, ...ofThings],
  };
}

function attentionOut(shelf: Shelf, today: Day, units: Units): ListOut {
  const { groups } = attentionList(shelf, today, units, ALL);
  return {
    title: 'Needs attention',
    headings: ['To do', 'When', 'Thing', 'Why', 'What to do', 'Stands in'],
    rows: groups.flatMap((group) =>
      group.items.map(({ flag, title, stands }) => [group.title, LEVEL_WORD[flag.level], title, flag.says, flag.todo, stands?.path ?? '']),
    ),
  };
}

function drawersOut({ name, fronts }: CabinetFront): ListOut {
  return {
    title: name,
    headings: ['Label', 'What it is', 'Periods', 'What is in it', 'Pieces that fit', 'Needs attention'],
    rows: fronts.map((front) => [
      front.label,
      front.name ?? front.kind,
      front.periods.join(', '),
      countsInWords(front),
      front.capacity === undefined ? '' : String(front.capacity),
      front.marks.map(markInWords).join(', '),
    ]),
  };
}

function waxesOut(shelf: Shelf, today: Day, roomC: number | undefined, units: Units): ListOut {
  return {
    title: 'Wax for today',
    headings: ['Wax', 'Colour', 'How it behaves', 'Suits today', 'Why', 'In the tub', 'Inject at', 'Pressure', 'Injector'],
    rows: waxToday(shelf, today, roomC, units).cards.map((card) => [
      card.name,
      card.colour ?? '',
      card.behaviour ?? '',
      card.verdict,
      card.reasons.map(({ says }) => says).join(' '),
      [card.left, card.isLow ? 'low' : '', card.leftWhy ?? ''].filter(Boolean).join('; '),
      card.heat ?? '',
      card.pressure ?? '',
      card.heldBy.map(({ name }) => name).join(', '),
    ]),
  };
}

function historyOut(shelf: Shelf, id: ThingId, entries: readonly Entry[], units: Units): ListOut {
  return {
    title: `History: ${titleOf(shelf, thingOf(shelf, id))}`,
    headings: ['Day', 'What happened', 'Note', 'Written by'],
    rows: historyOf(shelf, entries, units, id).map(({ day, says, note, by }) => [day, says, note ?? '', by ?? '']),
  };
}
