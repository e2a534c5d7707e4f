import type { Deps } from '../actions/deps.ts';
import { presetOf } from '../domain/label-presets.ts';
import { correctionFor, GRID_FIELDS, type GridField, parseGrid, type SheetGrid, testBarOf } from '../domain/label-sheet.ts';
import { isProblem, type Problem } from '../domain/problem.ts';

/** The sheet this device prints on, as chosen and typed. */
export interface LabelSettings {
  /** A preset's id, or `own`. */
  readonly sheet: string;
  /** The studio's own grid as typed, mm. */
  readonly own: Readonly<Record<string, string>>;
  /** The own grid is plain paper: print lines to cut along. */
  readonly isCut: boolean;
  /** What the test bar measures on paper, as typed, mm. */
  readonly measured: string;
}

export const OWN_SHEET = 'own';
const KEPT_AS = 'label-sheet';

/** A grid as it stands in the form's fields. */
export function typedGrid(grid: SheetGrid): Record<GridField, string> {
  return Object.fromEntries(GRID_FIELDS.map(({ field }) => [field, String(grid[field])])) as Record<GridField, string>;
}

/** What was kept may be anything, also what cannot be made a text of. */
const keptText = (raw: unknown, other: string) => (typeof raw === 'string' || typeof raw === 'number' ? String(raw) : other);

export function readLabelSettings({ settings }: Pick<Deps, 'settings'>): LabelSettings {
  const raw = settings.get<Partial<Record<keyof LabelSettings, unknown>>>(KEPT_AS) ?? {};
  const own = typeof raw.own === 'object' && raw.own !== null ? (raw.own as Readonly<Record<string, unknown>>) : {};
  const sheet = raw.sheet === OWN_SHEET ? OWN_SHEET : presetOf(raw.sheet).id;
  return {
    sheet,
    own: Object.fromEntries(Object.entries(typedGrid(presetOf(sheet).grid)).map(([field, value]) => [field, keptText(own[field], value)])),
    isCut: raw.isCut === true,
    measured: keptText(raw.measured, ''),
  };
}

export function keepLabelSettings({ settings }: Pick<Deps, 'settings'>, chosen: LabelSettings): void {
  settings.set(KEPT_AS, chosen);
}

export interface ChosenSheet {
  readonly grid: SheetGrid | Problem;
  readonly isCut: boolean;
  readonly bar: number;
  /** What drawings are enlarged by. */
  readonly correction: number | Problem;
}

export function chosenSheet({ sheet, own, isCut, measured }: LabelSettings): ChosenSheet {
  const preset = sheet === OWN_SHEET ? undefined : presetOf(sheet);
  const grid = preset ? preset.grid : parseGrid(own);
  const bar = isProblem(grid) ? 100 : testBarOf(grid);
  return { grid, isCut: preset ? preset.isCut : isCut, bar, correction: correctionFor(measured, bar) };
}
