import type { Day } from '../brand.ts';
import type { PlanDraft } from './plan.ts';
import type { RowCells } from './row-cells.ts';

const SHOTS_MAX = 100_000;

/** Shots so far, condition and faults of a mould, as the entries that would have told them. */
export function sideDrafts(own: string, cells: RowCells): { readonly drafts: readonly PlanDraft[]; readonly broken?: string } {
  const {
    shots = 0,
    grade,
    faults,
    lastUsed,
    inspected,
  } = cells.parts as {
    shots?: number;
    grade?: string;
    faults?: readonly string[];
    lastUsed?: Day;
    inspected?: Day;
  };
  const retired = retiredDraft(own, cells);
  const drafts: PlanDraft[] = [];
  if (shots > 0) {
    if (shots > SHOTS_MAX) return { drafts, broken: `Shots so far: ${shots} is more than ${SHOTS_MAX}.` };
    drafts.push({
      kind: 'injected',
      mould: own,
      shots,
      // A list tells how often it was shot, not how many of the waxes were good.
      good: 0,
      note: 'Shots before Mouldkeep.',
      ...(lastUsed ? { on: lastUsed } : {}),
    });
  }
  const reason = grade?.startsWith('retired:') ? grade.slice('retired:'.length) : undefined;
  const judged = reason === undefined ? (grade ?? (faults ? 'watch' : undefined)) : faults ? 'failed' : undefined;
  const on = inspected ? { on: inspected } : {};
  if (judged !== undefined) drafts.push({ kind: 'inspected', of: own, grade: judged, ...(faults ? { faults } : {}), ...on });
  if (retired) drafts.push(retired);
  else if (reason !== undefined) drafts.push({ kind: 'retired', of: own, reason, ...on });
  return { drafts };
}

/** That a thing is out of use, why and since when, where the row says so. */
export function retiredDraft(own: string, cells: RowCells): PlanDraft | undefined {
  const { retired, retiredOn } = cells.parts as { retired?: string; retiredOn?: Day };
  return retired === undefined ? undefined : { kind: 'retired', of: own, reason: retired, ...(retiredOn ? { on: retiredOn } : {}) };
}
