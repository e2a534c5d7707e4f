import type { EntryId, PlaceId, Sha256 } from '../brand.ts';
import type { Desk } from '../desk.ts';
import { overlap } from '../drawing/box.ts';
import { type Drawing, wrongWith } from '../drawing/drawing.ts';
import { frontsIn } from '../drawing/drawing-of.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { labelOf } from '../nesting.ts';
import { isProblem, type Problem } from '../problem.ts';
import type { Place, Shelf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { isWithin } from '../whereabouts.ts';
import { frontEntries } from './drawing-fronts.ts';
import { goneEntries, goneProblem } from './drawing-gone.ts';
import { checkedFields } from './field-checks.ts';
import { allWritten } from './written.ts';

export interface SaveDrawing {
  /** The cabinet that was drawn; a new one without it. */
  readonly of?: PlaceId | undefined;
  /** What is said of the cabinet; what is not named stays. */
  readonly name?: string | undefined;
  readonly open?: boolean | undefined;
  /** The room it stands in; `null` for none. A room named in `newRoom` is written down first. */
  readonly in?: PlaceId | null | undefined;
  readonly newRoom?: string | undefined;
  readonly drawing: Drawing;
  /** The drawing as it was begun: only what was changed in it is written down, so that two people can change different drawers. */
  readonly begun?: Drawing | undefined;
  readonly pictures?: readonly Sha256[] | undefined;
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

/**
 * Writes down a cabinet as it was drawn, in one action. Drawers keep their ids, codes and contents wherever they are put; new ones get codes;
 * what stood in those taken out goes where the drawing says.
 */
export function planSaveDrawing(shelf: Shelf, desk: Desk, command: SaveDrawing): readonly Entry[] | Problem {
  const { of, drawing, begun, confirmed } = command;
  const cabinet = of === undefined ? undefined : shelf.things.place.get(of);
  if (of !== undefined && !cabinet) return formProblem({ drawing: 'This cabinet is no longer recorded.' });
  const wrong = wrongWith(drawing) ?? nestingProblem(shelf, command) ?? goneProblem(shelf, cabinet, drawing);
  if (wrong) return wrong;
  const fields = cabinetFields(command, cabinet);
  if (isProblem(fields)) return fields;
  const room = roomFields(command);
  if (isProblem(room)) return room;
  const name = String(fields['name'] ?? cabinet?.name ?? '');
  const warning = unconfirmed([...namesakes(shelf, cabinet, fields['name']), ...covered(shelf, cabinet, drawing)], confirmed);
  if (warning) return warning;

  const raws: object[] = [];
  const recorded = (made: object): EntryId => {
    const entry = { ...desk.entry(), kind: 'recorded', noun: 'place', fields: { ...made, code: desk.code('place') } };
    raws.push(entry);
    return entry.id;
  };
  const within = room ? { in: recorded(room) } : {};
  const pictures = (command.pictures ?? []).filter((sha) => !cabinet?.pictures?.includes(sha));
  let id: PlaceId;
  if (cabinet) {
    id = cabinet.id;
    const changed = { ...changedFrom(cabinet, fields), ...within };
    if (Object.keys(changed).length > 0 || pictures.length > 0)
      raws.push({
        ...desk.entry(),
        kind: 'corrected',
        noun: 'place',
        of: id,
        fields: changed,
        ...(pictures.length > 0 ? { pictures } : {}),
      });
  } else {
    id = recorded({ ...fields, ...within }) as string as PlaceId;
    if (pictures.length > 0) Object.assign(raws.at(-1) ?? {}, { pictures });
  }
  const fronts = frontEntries(shelf, desk, { cabinet: id, name, drawing, begun });
  raws.push(...fronts.entries, ...goneEntries(shelf, desk, cabinet, drawing, fronts.ids));
  return allWritten(raws, command.units);
}

function cabinetFields(command: SaveDrawing, cabinet: Place | undefined): Readonly<Record<string, unknown>> | Problem {
  const { name, open, in: within, newRoom, drawing } = command;
  return checkedFields(
    'place',
    {
      ...(cabinet ? {} : { kind: 'cabinet' }),
      name: cabinet ? name : (name ?? ''),
      widthMm: drawing.widthMm,
      heightMm: drawing.heightMm,
      open: open === false && !cabinet?.open ? undefined : open,
      in: newRoom || (within === null && !cabinet?.in) ? undefined : within,
    },
    command.units,
  );
}

function roomFields({ newRoom }: SaveDrawing): Readonly<Record<string, unknown>> | Problem | undefined {
  if (!newRoom?.trim()) return undefined;
  const fields = checkedFields('place', { name: newRoom, kind: 'room' });
  return isProblem(fields) ? formProblem({ newRoom: fields.says }) : fields;
}

/** Nothing stands in itself: not the cabinet in a place inside it, nor a front that holds the cabinet. */
function nestingProblem(shelf: Shelf, { of, in: within, drawing }: SaveDrawing): Problem | undefined {
  const room = within ? shelf.things.place.get(within) : undefined;
  if (within && !room) return formProblem({ in: 'This room is no longer recorded. Choose another.' });
  if (of === undefined) return undefined;
  if (room && isWithin(shelf, room.id, of)) return formProblem({ in: 'A cabinet cannot stand in itself, nor in a place inside it.' });
  for (const front of drawing.fronts) {
    if (front.of !== undefined && isWithin(shelf, of, front.of))
      return formProblem({ drawing: `${front.label} cannot be a front of this cabinet: the cabinet is it, or stands in it.` });
  }
  return undefined;
}

function changedFrom(place: Place, fields: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const before = place as unknown as Readonly<Record<string, unknown>>;
  return Object.fromEntries(Object.entries(fields).filter(([field, value]) => (before[field] ?? null) !== value));
}

function namesakes(shelf: Shelf, cabinet: Place | undefined, name: unknown): readonly string[] {
  if (typeof name !== 'string' || name === cabinet?.name) return [];
  const same = [...shelf.things.place.values()].some(
    (place) => place.kind === 'cabinet' && !place.retired && place.id !== cabinet?.id && place.name?.toLowerCase() === name.toLowerCase(),
  );
  return same ? [`There is a cabinet called ${name} already.`] : [];
}

/** Drawers that somebody else added while this was drawn, and that would lie beneath its fronts. */
function covered(shelf: Shelf, cabinet: Place | undefined, { fronts, gone }: Drawing): readonly string[] {
  if (!cabinet) return [];
  const known = new Set<string | undefined>([...fronts, ...gone].map(({ of }) => of));
  return frontsIn(shelf, cabinet)
    .filter((place) => !known.has(place.id) && fronts.some(({ box }) => place.box !== undefined && overlap(box, place.box)))
    .map(
      (place) =>
        `${labelOf(shelf, place)} was added to ${titleOf(shelf, cabinet)} meanwhile and lies where this drawing has another front.`,
    );
}
