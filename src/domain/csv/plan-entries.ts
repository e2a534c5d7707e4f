import type { Code } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { Noun } from '../noun.ts';
import { draftIndex, type ImportPlan, isTaken, type PlanDraft } from './plan.ts';

/** The drafts that the rows brought in need, each once, and each after those it refers to. */
export function neededDrafts(plan: ImportPlan, flipped: ReadonlySet<number>): readonly number[] {
  const needed = new Set<number>();
  const add = (index: number): void => {
    if (needed.has(index)) return;
    const draft = plan.drafts[index] as PlanDraft;
    for (const key of REFS) {
      addRef(draft[key]);
      addRef(draft.fields?.[key]);
    }
    needed.add(index);
  };
  const addRef = (value: unknown): void => {
    if (Array.isArray(value)) return value.forEach(addRef);
    const index = typeof value === 'string' ? draftIndex(value) : undefined;
    if (index !== undefined) add(index);
  };
  for (const row of plan.rows) if (isTaken(row, flipped)) for (const index of row.drafts) add(index);
  return [...needed];
}

/** The entries of the rows that are brought in, as one action: withdrawing the first takes all of it back. */
export function planEntries(desk: Desk, plan: ImportPlan, flipped: ReadonlySet<number>): readonly Entry[] {
  const ids = new Map<number, string>();
  const codes = new Set(plan.drafts.flatMap((draft) => (draft.fields?.['code'] as Code | undefined) ?? []));
  const freshCode = (noun: Noun): Code => {
    // Thousands of codes are drawn at once: two alike among them are likelier than one that the shelf has.
    for (;;) {
      const code = desk.code(noun);
      if (codes.has(code)) continue;
      codes.add(code);
      return code;
    }
  };
  const idOf = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(idOf);
    const index = typeof value === 'string' ? draftIndex(value) : undefined;
    return index === undefined ? value : ids.get(index);
  };
  const resolved = (part: Readonly<Record<string, unknown>>): Record<string, unknown> => {
    const own = { ...part };
    for (const key of REFS) if (own[key] !== undefined) own[key] = idOf(own[key]);
    return own;
  };
  return neededDrafts(plan, flipped).map((index) => {
    const { fields, ...rest } = plan.drafts[index] as PlanDraft;
    const own = fields ? { fields: { code: fields['code'] ?? freshCode(rest.noun as Noun), ...resolved(fields) } } : {};
    const entry = { ...desk.entry(), ...resolved(rest), ...own } as unknown as Entry;
    ids.set(index, entry.id);
    return entry;
  });
}

/** Where an entry or a field may name another thing; anywhere else `#12` is only what somebody wrote. */
const REFS = ['design', 'master', 'masters', 'wax', 'in', 'periods', 'at', 'mould', 'of'] as const;
