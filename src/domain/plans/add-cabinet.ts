import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import { tenths } from '../drawing/box.ts';
import { FRONTS_MAX } from '../drawing/drawing.ts';
import { letterOf } from '../drawing/labels.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { isProblem, type Problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { checkedFields } from './field-checks.ts';
import { allWritten } from './written.ts';

export interface AddCabinet {
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The room it stands in. */
  readonly in?: PlaceId | undefined;
  /** What a refusal is to be read in. */
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Board around and between the drawers, mm (common practice, no source). */
const FRAME_MM = 18;
const RAIL_MM = 6;
const DRAWER_LEAST_MM = 15;

/** Writes down a cabinet and its drawers, all of one size, each with its place on the front and a label code of its own. */
export function planAddCabinet(shelf: Shelf, desk: Desk, command: AddCabinet): readonly Entry[] | Problem {
  const { rows, columns, widthMm, heightMm, confirmed } = command;
  const cabinet = checkedFields(
    'place',
    {
      name: command.name,
      kind: 'cabinet',
      widthMm,
      heightMm,
      ...(command.in === undefined ? {} : { in: command.in }),
    },
    command.units,
  );
  if (isProblem(cabinet)) return cabinet;
  if (command.in !== undefined && !shelf.things.place.has(command.in)) return formProblem({ in: 'That room is no longer recorded.' });
  const wrong = gridProblem(command);
  if (wrong) return wrong;
  const name = String(cabinet['name']);
  const warning = unconfirmed(isTaken(shelf, name) ? [`There is a cabinet called ${name} already.`] : [], confirmed);
  if (warning) return warning;
  const first = desk.entry();
  const raws: object[] = [{ ...first, kind: 'recorded', noun: 'place', fields: { ...cabinet, code: desk.code('place') } }];
  const w = (widthMm - 2 * FRAME_MM - (columns - 1) * RAIL_MM) / columns;
  const h = (heightMm - 2 * FRAME_MM - (rows - 1) * RAIL_MM) / rows;
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row < rows; row++) {
      const label = columns === 1 ? `${row + 1}` : `${letterOf(column)}${row + 1}`;
      const box = { x: tenths(FRAME_MM + column * (w + RAIL_MM)), y: tenths(FRAME_MM + row * (h + RAIL_MM)), w: tenths(w), h: tenths(h) };
      const fields = {
        code: desk.code('place'),
        name: `${name} ${label}`.slice(0, 120),
        label,
        kind: 'drawer',
        in: first.id,
        box,
        order: raws.length,
      };
      raws.push({ ...desk.entry(), kind: 'recorded', noun: 'place', fields });
    }
  }
  return allWritten(raws);
}

const NO_ROOM = 'Not even one drawer fits in that.';

function gridProblem({ rows, columns, widthMm, heightMm }: AddCabinet): Problem | undefined {
  const wrong: Record<string, string> = {};
  if (!Number.isInteger(rows) || rows < 1 || rows > 100) wrong['rows'] = 'Rows go from 1 to 100.';
  if (!Number.isInteger(columns) || columns < 1 || columns > 100) wrong['columns'] = 'Columns go from 1 to 100.';
  if (Object.keys(wrong).length === 0) {
    if (rows * columns > FRONTS_MAX) wrong['rows'] = `That is ${rows * columns} drawers; ${FRONTS_MAX} fit in one cabinet here.`;
    if ((widthMm - 2 * FRAME_MM) / columns - RAIL_MM < DRAWER_LEAST_MM)
      wrong['widthMm'] = columns === 1 ? NO_ROOM : `${columns} drawers side by side do not fit in that width.`;
    if ((heightMm - 2 * FRAME_MM) / rows - RAIL_MM < DRAWER_LEAST_MM)
      wrong['heightMm'] = rows === 1 ? NO_ROOM : `${rows} drawers one above the other do not fit in that height.`;
  }
  return Object.keys(wrong).length > 0 ? formProblem(wrong) : undefined;
}

function isTaken(shelf: Shelf, name: string): boolean {
  for (const place of shelf.things.place.values())
    if (place.kind === 'cabinet' && place.name?.toLowerCase() === name.toLowerCase()) return true;
  return false;
}
