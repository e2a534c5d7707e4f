import type { Metal } from '../src/domain/design.ts';
import type { EntryKind } from '../src/domain/entry.ts';
import type { Rubber } from '../src/domain/mould.ts';
import type { Noun } from '../src/domain/noun.ts';
import type { openBook } from './book.ts';
import type { makeChance } from './chance.ts';
import type { Names } from './names.ts';

export type Domain = typeof import('./domain.ts');
export type Book = ReturnType<typeof openBook>;
export type Chance = ReturnType<typeof makeChance>;
export type Person = 'Maren' | 'Jory' | 'Pell';
/** Adds an entry to the action being written and gives back its id. What it is given is checked by parseEntry, as any backup is. */
export type Add = (kind: EntryKind, fields: object) => string;
export type MakeCode = (noun: Noun) => string;
export type Rejects = { [fault: string]: number };

/** What the story reads of a thing on the shelf, whatever its noun; only what that noun has is there. */
export interface Seen {
  readonly id: string;
  readonly noun: Noun;
  readonly at: string;
  readonly usual: string;
  readonly until?: string;
  readonly retired?: object;
  readonly label: string;
  readonly kind: string;
  readonly for?: string;
  readonly box?: object;
  readonly order: number;
  readonly periods: readonly string[];
  readonly design: string;
  readonly size: string;
  readonly metal: Metal;
  readonly mould?: string;
  readonly master?: string;
  readonly made?: string;
  readonly state?: string;
  readonly grade?: string;
  readonly pieces: number;
  readonly grams: number;
  readonly shots: number;
  readonly sound?: number;
  readonly scrap?: number;
  readonly shotGrams: number;
  readonly injection: { readonly waxC: number; readonly pressureKpa: number; readonly holdS: number };
  readonly holds: string;
  readonly lengthMm: number;
  readonly diameterMm: number;
  readonly heightMm: number;
}

export type Fate =
  | 'sound'
  | 'watch'
  | 'worn'
  | 'failed'
  | 'tornOut'
  | 'faults'
  | 'oldShots'
  | 'oldRubber'
  | 'rejects'
  | 'lookDue'
  | 'stray'
  | 'dud'
  | 'gone';

/** What the story keeps in mind of a mould besides its record. */
export interface MouldNote {
  readonly id: string;
  readonly index: number;
  readonly size: string;
  readonly purpose: string;
  rubber: Rubber;
  readonly cavities: number;
  readonly needsHigh: boolean;
  life: number;
  fate: Fate;
  readonly isPoured: boolean;
  masterMade?: string;
  /** Day from which its fate shows. */
  turnsOn?: string;
  lookedOn?: string;
}

/** Ids by the tables' own keys. */
export interface Ids {
  readonly place: Names;
  readonly period: Names;
  readonly wax: Names;
  readonly injector: Names;
  /** By number in DESIGNS. */
  readonly design: Names;
  /** By design's number and size, `3/L`. */
  readonly master: Names;
  readonly masters: string[];
  readonly moulds: MouldNote[];
  flasks: readonly string[];
  /** Raw piles by mould and wax; dressed piles by their raw pile; castings by design, size and metal. */
  readonly piles: Map<string, string>;
  readonly dressed: Map<string, string>;
  readonly castings: Map<string, string>;
  readonly short: ReadonlySet<string>;
  readonly shortFrom: string;
}

export interface Pending {
  readonly flask: string;
  readonly metal: Metal;
  readonly lots: readonly { readonly from: string; readonly pieces: number; readonly pile: Seen }[];
}

export interface Ctx {
  readonly domain: Domain;
  readonly book: Book;
  readonly chance: Chance;
  readonly ids: Ids;
  readonly pending: Pending[];
  readonly drawings: readonly (string | undefined)[];
  readonly mouldPictures: Readonly<Record<string, string>>;
}

export type Happen = (ctx: Ctx, roomC: number) => void;
export type On = (day: string, happen: Happen) => void;
export type Plan = ReadonlyMap<string, readonly Happen[]>;
