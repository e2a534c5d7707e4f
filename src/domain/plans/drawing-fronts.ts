import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Drawing, DrawnFront } from '../drawing/drawing.ts';
import type { Place, Shelf } from '../shelf.ts';

interface Fronts {
  readonly cabinet: PlaceId;
  /** What the cabinet is called: its drawers are called after it. */
  readonly name: string;
  readonly drawing: Drawing;
  readonly begun: Drawing | undefined;
}

interface FrontEntries {
  readonly entries: readonly object[];
  /** The place each front of the drawing is, by its key. */
  readonly ids: ReadonlyMap<string, PlaceId>;
}

/** Entries for the fronts of a drawing: new ones recorded with codes of their own, and of the others what was changed. */
export function frontEntries(shelf: Shelf, desk: Desk, { cabinet, name, drawing, begun }: Fronts): FrontEntries {
  const entries: object[] = [];
  const ids = new Map<string, PlaceId>();
  const sequence = (list: Drawing | undefined) => list?.fronts.map(({ key }) => key).join(' ');
  const isOrdered = begun !== undefined && sequence(begun) === sequence(drawing);
  drawing.fronts.forEach((front, at) => {
    const place = front.of === undefined ? undefined : shelf.things.place.get(front.of);
    if (place) {
      ids.set(front.key, place.id);
      const before = begun?.fronts.find(({ key }) => key === front.key);
      const order = isOrdered || place.order === at + 1 ? {} : { order: at + 1 };
      const fields = { ...changed(front, before, place, cabinet, name), ...order };
      if (Object.keys(fields).length > 0) entries.push({ ...desk.entry(), kind: 'corrected', noun: 'place', of: place.id, fields });
      return;
    }
    const entry = desk.entry();
    ids.set(front.key, entry.id as string as PlaceId);
    const { key: _, of: __, periods, ...said } = front;
    const fields = {
      code: desk.code('place'),
      name: nameOf(name, front.label),
      ...said,
      ...(periods.length > 0 ? { periods } : {}),
      in: cabinet,
      order: at + 1,
    };
    entries.push({ ...entry, kind: 'recorded', noun: 'place', fields });
  });
  return { entries, ids };
}

function nameOf(cabinet: string, label: string): string {
  return `${cabinet} ${label}`.trim().slice(0, 120);
}

const DETAILS = ['kind', 'open', 'periods', 'for', 'capacity', 'box'] as const;

/** Fields of a recorded front that differ from how the drawing began and from the record; a box also when none is recorded. */
function changed(front: DrawnFront, before: DrawnFront | undefined, place: Place, cabinet: PlaceId, name: string): Record<string, unknown> {
  const fields: Record<string, unknown> = {};
  for (const field of DETAILS) {
    const isTouched = !isSame(front[field], before?.[field]) || (field === 'box' && place.box === undefined);
    if (isTouched && !isSame(front[field], place[field])) fields[field] = isNothing(front[field]) ? null : front[field];
  }
  if (front.label !== before?.label && front.label !== place.label) {
    fields['label'] = front.label;
    if (place.name === nameOf(name, before?.label ?? '')) fields['name'] = nameOf(name, front.label);
  }
  if (place.in !== cabinet) fields['in'] = cabinet;
  return fields;
}

function isNothing(value: unknown): boolean {
  return value === undefined || (Array.isArray(value) && value.length === 0);
}

/** Fields are plain data: equal when they read the same, boxes with their sides in whatever order. */
function isSame(a: unknown, b: unknown): boolean {
  if (isNothing(a) || isNothing(b)) return isNothing(a) && isNothing(b);
  const told = (value: unknown) =>
    JSON.stringify(Array.isArray(value) ? value : typeof value === 'object' ? Object.entries(value ?? {}).sort() : value);
  return told(a) === told(b);
}
