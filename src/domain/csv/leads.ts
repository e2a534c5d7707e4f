import { PERIODS_MAX } from '../design.ts';
import { fold } from '../folding.ts';
import type { KnownNoun } from './known.ts';
import { type Named, readNamed } from './named.ts';
import { draftIndex } from './plan.ts';
import type { Planning } from './planning.ts';
import type { Found } from './register.ts';
import type { RowCells } from './row-cells.ts';
import type { Target } from './targets.ts';

const SIZES_MAX = 60;

/** Where the names in a row lead: its design, periods, master, wax and place; each is found, or made once for the whole list. */
export class Leads {
  readonly refs: {
    readonly design?: string;
    readonly periods?: readonly string[];
    readonly master?: string;
    readonly masters?: readonly string[];
    readonly wax?: string;
    readonly at?: string;
  };
  readonly doubts: string[] = [];
  /** What the row brings with it, in words. */
  readonly says: string[] = [];
  private readonly cells: RowCells;

  constructor(planning: Planning, cells: RowCells) {
    this.cells = cells;
    const { register, places, target } = planning;
    const { design, master, masters, wax, period, place, cabinet } = cells.parts as Readonly<Record<string, string | undefined>>;
    const size = cells.fields['size'] as string | undefined;
    const before = register.drafts.length;
    const named = <T extends { doubt?: string }>(found: T): T => {
      if (found.doubt) this.doubts.push(found.doubt);
      return found;
    };
    const periods = period === undefined ? undefined : findPeriods(planning, period).map((found) => named(found).ref);
    const designRef = design === undefined || target === 'design' ? undefined : named(findOne(planning, 'design', design)).ref;
    if (designRef !== undefined) widen(planning, designRef, size, periods);
    const about = { ...(designRef ? { design: designRef } : {}), ...(size ? { size } : {}) };
    const masterRef = master === undefined || target === 'master' ? undefined : named(findOne(planning, 'master', master, about)).ref;
    const masterRefs =
      masters === undefined ? undefined : namesIn(masters).map((each) => named(register.findNamed('master', each, () => ({}))).ref);
    const waxRef = wax === undefined || target === 'wax' ? undefined : named(findOne(planning, 'wax', wax)).ref;
    for (const draft of register.drafts.slice(before)) this.says.push(`New ${draft.noun}: ${draft.fields['name']}.`);
    const words = place ?? cabinet;
    const stands = words === undefined ? undefined : named(places.find(words, place === undefined ? undefined : cabinet));
    for (const made of stands?.made ?? []) this.says.push(`New ${made}.`);
    this.refs = {
      ...(designRef ? { design: designRef } : {}),
      ...(periods ? { periods } : {}),
      ...(masterRef ? { master: masterRef } : {}),
      ...(masterRefs ? { masters: masterRefs } : {}),
      ...(waxRef ? { wax: waxRef } : {}),
      ...(stands?.ref ? { at: stands.ref } : {}),
    };
  }

  /** What of it belongs among the fields of the thing itself. */
  fields(target: Target): Record<string, unknown> {
    const { design, periods, master, masters, wax } = this.refs;
    if (target === 'design') return periods ? { periods } : {};
    if (target === 'master') return design ? { design } : {};
    if (target !== 'mould') return {};
    const { waxC, pressureKpa, holdS } = this.cells.parts;
    const injection = Object.fromEntries(Object.entries({ waxC, pressureKpa, holdS }).filter(([, value]) => value !== undefined));
    return {
      ...(design ? { design } : {}),
      ...(master ? { master } : {}),
      ...(masters ? { masters } : {}),
      ...(wax ? { wax } : {}),
      ...(Object.keys(injection).length > 0 ? { injection } : {}),
    };
  }
}

/** What one cell names, in our own way of writing it or by its name alone. */
function findOne(planning: Planning, noun: KnownNoun, cell: string, fields: Record<string, unknown> = {}): Found {
  const [own, ...more] = readNamed(cell) ?? [];
  if (own && more.length === 0) return planning.register.findNamed(noun, own, () => fields);
  return planning.register.find(noun, cell, () => fields);
}

/** Names in one cell, parted by semicolons when they are not in our own way. */
function namesIn(cell: string): readonly Named[] {
  const parts = cell.split(/\s*[;|\n]\s*/).filter((part) => part !== '');
  return readNamed(cell) ?? parts.map((name) => ({ name }));
}

/** The periods a cell names; a period that is new is made. */
export function findPeriods(planning: Planning, cell: string): readonly Found[] {
  const own = readNamed(cell);
  if (own) return own.map((each) => planning.register.findNamed('period', each, () => ({})));
  return periodsOf(planning, cell).map((name) => planning.register.find('period', name, () => ({})));
}

/** Several periods in one cell, unless the whole cell is one's name. */
function periodsOf({ register }: Planning, words: string): readonly string[] {
  if (register.lookUp('period', words) !== undefined) return [words];
  return words.split(/\s*[,;/|\n]\s*/).filter((part) => fold(part) !== '');
}

/** A design that the import makes gets the sizes and periods that its rows name. */
function widen({ register }: Planning, ref: string, size: string | undefined, periods: readonly string[] | undefined): void {
  const index = draftIndex(ref);
  const fields = index === undefined ? undefined : register.drafts[index]?.fields;
  if (!fields) return;
  const sizes = (fields['sizes'] ?? []) as { label: string }[];
  if (size !== undefined && sizes.length < SIZES_MAX && !sizes.some((each) => fold(each.label) === fold(size)))
    fields['sizes'] = [...sizes, { label: size }];
  const all = [...new Set([...((fields['periods'] ?? []) as string[]), ...(periods ?? [])])].slice(0, PERIODS_MAX);
  if (all.length > 0) fields['periods'] = all;
}
