import type { Code } from '../brand.ts';
import { fold } from '../folding.ts';
import { segments } from './find-place.ts';
import { findPeriods } from './leads.ts';
import { draftIndex, type RowPlan } from './plan.ts';
import { planCodedPlace } from './plan-coded-place.ts';
import { exists, type Planning, unreadable } from './planning.ts';
import type { RowCells } from './row-cells.ts';
import { retiredDraft } from './side-drafts.ts';
import type { Row } from './table.ts';
import { kindInName } from './word-cell.ts';

/** What becomes of a row of a list of places. A place that an earlier row only named gets its fields here. */
export function planPlace(planning: Planning, row: Row, cells: RowCells, name: string | undefined, code: Code | undefined): RowPlan {
  const { places, register, byId } = planning;
  if (code !== undefined) return planCodedPlace(planning, row, cells, name, code);
  if (name === undefined) return unreadable(row, ['There is no name.']);
  const above = cells.parts['in'] === undefined ? [] : segments(cells.parts['in'] as string);
  if (above.some((each) => fold(each) === fold(name))) return unreadable(row, [`“${name}” would stand in itself.`]);
  // In doubt where it stands it is brought in by itself, and there it is looked for too when the list is read again.
  const isUnclear = above.length > 0 && places.all(above.at(-1) as string, above.slice(0, -1)).length > 1;
  const named = above.length > 0 ? places.all(name, above) : [];
  const alone = named.length === 0 && (above.length === 0 || isUnclear) ? places.all(name) : [];
  const inThere = [...named, ...alone.filter((node) => node.parent === undefined)];
  // A place that earlier rows only named may turn out to stand in another.
  const there = inThere.length > 0 ? inThere : places.all(name).filter((node) => places.implied.has(node.ref) && node.parent === undefined);
  const known = there.map((node) => byId.get(node.ref)).find((thing) => thing !== undefined);
  if (known) return exists(planning, row, name, known);
  const says: string[] = [];
  const doubts = [...cells.doubts];
  const before = register.drafts.length;
  const parent = above.length === 0 ? undefined : places.find(above.at(-1) as string, above.slice(0, -1).join(' / ') || undefined);
  if (parent?.ref !== undefined && places.isAround(name, parent.ref)) return unreadable(row, [`“${name}” would stand in itself.`]);
  if (parent?.doubt) doubts.push(parent.doubt.replace('It comes in without a place.', 'It comes in by itself.'));
  for (const made of parent?.made ?? []) says.push(`New ${made}.`);
  const periods = cells.parts['period'] === undefined ? [] : findPeriods(planning, cells.parts['period'] as string);
  doubts.push(...periods.flatMap((each) => each.doubt ?? []));
  const fields: Record<string, unknown> = {
    ...cells.fields,
    ...(periods.length > 0 ? { periods: periods.map((each) => each.ref) } : {}),
  };
  const implied = there.find((node) => places.implied.has(node.ref));
  if (implied) {
    if (parent?.ref !== undefined && implied.parent === undefined) {
      if (!places.put(implied.ref, parent.ref)) return unreadable(row, [`“${name}” would stand in itself.`]);
      fields['in'] = parent.ref;
    }
    places.implied.delete(implied.ref);
    const own = draftIndex(implied.ref) as number;
    Object.assign(register.drafts[own]?.fields as object, fields);
    places.call(implied.ref, fields['label'] as string | undefined);
    const retired = retiredDraft(implied.ref, cells);
    return {
      line: row.line,
      state: doubts.length > 0 ? 'doubtful' : 'new',
      take: true,
      title: name,
      says: [...doubts, ...says],
      drafts: [own, ...(retired ? [register.add(retired)] : [])],
    };
  }
  // One of that name on the shelf may be the very place: which of those called so it stands in is what cannot be told.
  const namesake = isUnclear ? places.all(name).find((node) => byId.has(node.ref)) : undefined;
  if (namesake) doubts.push(`There is a “${name}” on the shelf already. Choose it to bring in another.`);
  const twin = there[0];
  if (twin) doubts.push('A row before it has the same name. Choose it to bring in another.');
  const isSpare = (twin ?? namesake) !== undefined;
  const kind = kindInName(name) ?? (parent?.ref === undefined ? 'cabinet' : 'drawer');
  const ref = places.add(name, parent?.ref, { ...(fields['kind'] === undefined ? { kind } : {}), ...fields }, isSpare);
  const retired = retiredDraft(ref, cells);
  for (const draft of register.drafts.slice(before)) if (draft.noun === 'period') says.push(`New period: ${draft.fields['name']}.`);
  return {
    line: row.line,
    state: doubts.length > 0 ? 'doubtful' : 'new',
    take: !isSpare,
    title: name,
    says: [...doubts, ...says],
    drafts: [draftIndex(ref) as number, ...(retired ? [register.add(retired)] : [])],
  };
}
