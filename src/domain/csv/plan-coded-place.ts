import type { Code } from '../brand.ts';
import { findPeriods } from './leads.ts';
import { draftIndex, type RowPlan } from './plan.ts';
import { exists, type Planning, unreadable } from './planning.ts';
import type { RowCells } from './row-cells.ts';
import { retiredDraft } from './side-drafts.ts';
import type { Row } from './table.ts';

/** A place whose row carries its label code, as our own lists write it: nothing about it is guessed. */
export function planCodedPlace(planning: Planning, row: Row, cells: RowCells, name: string | undefined, code: Code): RowPlan {
  const { places, register, byId } = planning;
  const inside = cells.parts['in'] as string | undefined;
  const parent = inside === undefined ? undefined : places.find(inside);
  const title = name ?? code;
  const unlabelled = name === undefined ? [] : places.all(name).filter((node) => register.codeOf(node.ref) === undefined);
  const known = unlabelled.filter((node) => node.parent === parent?.ref).flatMap((node) => byId.get(node.ref) ?? [])[0];
  if (known) return exists(planning, row, title, known);
  const doubts = [...cells.doubts, ...(parent?.doubt === undefined ? [] : [parent.doubt])];
  const periods = cells.parts['period'] === undefined ? [] : findPeriods(planning, cells.parts['period'] as string);
  const fields: Record<string, unknown> = {
    ...(name === undefined ? {} : { name }),
    ...cells.fields,
    code,
    ...(periods.length > 0 ? { periods: periods.map((each) => each.ref) } : {}),
  };
  const implied = register.coded(code)?.ref;
  let ref: string;
  if (implied === undefined) ref = places.add(name, parent?.ref, fields);
  else {
    if (parent?.ref !== undefined && !places.put(implied, parent.ref)) return unreadable(row, [`“${title}” would stand in itself.`]);
    ref = implied;
    Object.assign(register.drafts[draftIndex(ref) as number]?.fields as object, fields, parent?.ref ? { in: parent.ref } : {});
    places.call(ref, name, fields['label'] as string | undefined);
  }
  register.takeCode(code, 'place', ref);
  planning.codes.set(code, row.line);
  const retired = retiredDraft(ref, cells);
  const drafts = [draftIndex(ref) as number, ...(retired ? [register.add(retired)] : [])];
  const says = [...doubts, ...(parent?.made ?? []).map((made) => `New ${made}.`)];
  return { line: row.line, state: doubts.length > 0 ? 'doubtful' : 'new', take: true, title, says, drafts };
}
