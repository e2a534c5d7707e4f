import type { PlaceId, Sha256 } from '../../domain/brand.ts';
import { type Drawing, startDrawing } from '../../domain/drawing/drawing.ts';
import { drawingOf } from '../../domain/drawing/drawing-of.ts';
import { firstStep, type Steps } from '../../domain/drawing/history.ts';
import { keptDrawing, keptSteps } from '../../domain/drawing/kept.ts';
import { formProblem } from '../../domain/form-problem.ts';
import type { SaveDrawing } from '../../domain/plans/save-drawing.ts';
import { type Problem, problem } from '../../domain/problem.ts';
import type { Place, Shelf } from '../../domain/shelf.ts';
import { lengthIn, type Units } from '../../domain/units.ts';
import { placeAround } from '../../domain/whereabouts.ts';
import type { Sound } from '../use-draft.ts';

/** Outside of a front to start from, mm. */
const [WIDTH_MM, HEIGHT_MM] = [900, 1000];

/** A cabinet as it is being drawn, with every step that can be undone. */
export interface DrawDraft {
  readonly steps: Steps;
  readonly begun: Drawing;
  readonly name: string;
  readonly isRack: boolean;
  readonly room: string;
  readonly newRoom: string;
  /** The photo under the drawing, and those taken for it that no entry names yet. */
  readonly photo: Sha256 | '';
  readonly taken: readonly Sha256[];
  /** How much of the photo is seen through the fronts, %. */
  readonly seen: number;
  /** Its size, % of the front, and how far it is shifted, % of the front. */
  readonly photoSize: number;
  readonly photoAcross: number;
  readonly photoDown: number;
}

export function startDraw(shelf: Shelf, cabinet: Place | undefined): DrawDraft {
  const begun = cabinet ? drawingOf(shelf, cabinet) : startDrawing(WIDTH_MM, HEIGHT_MM);
  return {
    steps: firstStep(begun),
    begun,
    name: cabinet?.name ?? '',
    isRack: cabinet?.open === true,
    room: roomOf(shelf, cabinet) ?? '',
    newRoom: '',
    photo: '',
    taken: [],
    seen: 60,
    photoSize: 100,
    photoAcross: 0,
    photoDown: 0,
  };
}

/** Of a draft that was found again, what can be read: a damaged drawing is as it was some steps before, or begun afresh. */
export function soundDraw(cabinet: Place | undefined): Sound<DrawDraft> {
  return (found, start, raw: Partial<Record<keyof DrawDraft, unknown>>) => {
    const [kept, begun] = [keptSteps(raw.steps), keptDrawing(raw.begun)];
    const sound = { ...found, taken: found.taken.filter((sha) => typeof sha === 'string') };
    // What is taken out is told from what it was begun with. The name and the photo are worth keeping all the same.
    if (!kept || !begun)
      return { values: { ...sound, steps: start.steps, begun: start.begun }, problem: cabinet ? UNREADABLE : UNREADABLE_NEW };
    return { values: { ...sound, steps: kept.steps, begun }, problem: kept.lost && LOST[kept.lost] };
  };
}

const UNREADABLE = problem('The unfinished drawing could not be read.', 'The cabinet is as it was, and drawing begins from how it stands.');
const UNREADABLE_NEW = problem('The unfinished drawing could not be read.', 'Your shelves are as they were, and drawing begins afresh.');
const LOST: Readonly<Record<'newest' | 'others', Problem>> = {
  newest: problem(
    'The last steps of the unfinished drawing could not be read.',
    'It is shown as it was before them, and your shelves are as they were.',
  ),
  others: problem(
    'Some steps of the unfinished drawing could not be read.',
    'It is shown as you left it, but cannot be taken back through those steps.',
  ),
};

function roomOf(shelf: Shelf, cabinet: Place | undefined): PlaceId | undefined {
  return cabinet && placeAround(shelf, cabinet);
}

/** A length as a field shows it. */
export function shownLength(mm: number, { length }: Units): string {
  return String(Math.round(lengthIn(mm, length) * 100) / 100);
}

/** What is to be written down; of a recorded cabinet only what was changed is named. */
export function drawCommand(shelf: Shelf, draft: DrawDraft, cabinet: Place | undefined, units: Units): SaveDrawing | Problem {
  const name = draft.name.trim();
  if (name === '') return formProblem({ name: 'Say what you call the cabinet.' });
  const [room, was] = [draft.room, roomOf(shelf, cabinet) ?? ''];
  const pictures = [...new Set([...draft.taken, ...(draft.photo === '' ? [] : [draft.photo])])];
  return {
    of: cabinet?.id,
    name: name === cabinet?.name ? undefined : name,
    open: draft.isRack === (cabinet?.open === true) ? undefined : draft.isRack,
    in: room === was ? undefined : room === '' ? null : (room as PlaceId),
    newRoom: draft.newRoom.trim() || undefined,
    drawing: draft.steps.now,
    begun: cabinet ? draft.begun : undefined,
    pictures,
    units,
  };
}
