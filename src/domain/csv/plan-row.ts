import type { Code } from '../brand.ts';
import { fold } from '../folding.ts';
import { nounOfCode, parseCode } from '../label.ts';
import { isProblem } from '../problem.ts';
import { aName, badName } from './bad-name.ts';
import type { KnownThing } from './known.ts';
import { Leads } from './leads.ts';
import { draftIndex, type RowPlan } from './plan.ts';
import { planPlace } from './plan-place.ts';
import { exists, type Planning, placed, unreadable } from './planning.ts';
import { shownCell } from './reading.ts';
import type { RowCells } from './row-cells.ts';
import { sideDrafts } from './side-drafts.ts';
import type { Row } from './table.ts';

/** What becomes of a row whose cells are read. One named by marks alone has to be chosen. */
export function planRow(planning: Planning, row: Row, cells: RowCells): RowPlan {
  const plan = planNamed(planning, row, cells);
  const called = ['number', 'name', 'design'].flatMap((part) => (cells.parts[part] as string | undefined) ?? []).join(' ');
  if ((plan.state !== 'new' && plan.state !== 'doubtful') || fold(called) !== '') return plan;
  const says = `${shownCell(called)} has neither a letter nor a digit. Choose it to bring it in all the same.`;
  return { ...plan, state: 'doubtful', take: false, says: [says, ...plan.says] };
}

function planNamed(planning: Planning, row: Row, cells: RowCells): RowPlan {
  const { target, register } = planning;
  if (row.broken !== undefined) return unreadable(row, [row.broken]);
  if (cells.broken.length > 0) return unreadable(row, cells.broken);
  const bad = badName(cells, target);
  if (bad) return unreadable(row, [bad]);
  const code = codeOf(planning, cells);
  if (code.broken) return unreadable(row, [code.broken]);
  if (code.thing) {
    planning.matcher.take(code.thing.id);
    return exists(planning, row, code.thing.name ?? code.value ?? '', code.thing);
  }
  const name = nameOf(cells, code.value === undefined);
  const kept = name === undefined ? undefined : aName(name);
  if (isProblem(kept)) return unreadable(row, [`Name: ${kept.says}`]);
  if (target === 'place') return planPlace(planning, row, cells, name, code.value);
  const isUnnamed = name === undefined && code.value === undefined;
  if (isUnnamed && (target === 'design' || target === 'wax' || cells.parts['design'] === undefined)) {
    return unreadable(row, [target === 'design' || target === 'wax' ? 'There is no name.' : 'There is neither a name nor a design.']);
  }
  const mark = register.drafts.length;
  const leads = new Leads(planning, cells);
  const match = planning.matcher.match(
    { name, design: leads.refs.design, size: cells.fields['size'] as string | undefined, at: leads.refs.at, code: code.value },
    row.line,
  );
  const title = name ?? ([cells.parts['design'], cells.fields['size']].filter(Boolean).join(' ') || (code.value ?? ''));
  if (match.same) return exists(planning, row, title, match.same);
  const fields: Record<string, unknown> = {
    ...(name === undefined ? {} : { name }),
    ...(code.value ? { code: code.value } : {}),
    ...cells.fields,
    ...leads.fields(target),
  };
  const grams = cells.parts['grams'];
  const at = leads.refs.at;
  const own = register.add({ kind: 'recorded', noun: target, fields, ...(at ? { at } : {}), ...(grams === undefined ? {} : { grams }) });
  const side = sideDrafts(`#${own}`, cells);
  if (side.broken) {
    register.drafts.length = Math.max(mark, own);
    return unreadable(row, [side.broken]);
  }
  const drafts = [own, ...side.drafts.map((draft) => register.add(draft))];
  if (name !== undefined) register.name(target, name, `#${own}`);
  if (code.value) {
    register.takeCode(code.value, target, `#${own}`);
    planning.codes.set(code.value, row.line);
  }
  const doubts = [...cells.doubts, ...leads.doubts, ...code.doubts];
  let take = true;
  if (match.like) {
    doubts.push(`One like it stands on the shelf already${placed(planning, match.like)}. Choose it to bring in another.`);
    take = false;
  } else if (match.line !== undefined) {
    doubts.push(
      `It is the same as line ${match.line}. ${name === undefined ? 'It comes in as another one.' : 'Choose it to bring in another.'}`,
    );
    take = name === undefined;
  }
  return { line: row.line, state: doubts.length > 0 ? 'doubtful' : 'new', take, title, says: [...doubts, ...leads.says], drafts };
}

/** The studio's own number and the name, as the one name a thing goes by; beside a label code the name is as it is written. */
function nameOf(cells: RowCells, withNumber: boolean): string | undefined {
  const number = withNumber ? (cells.parts['number'] as string | undefined) : undefined;
  const name = withNumber ? (cells.parts['name'] as string | undefined)?.replace(/\s+/g, ' ') : (cells.parts['name'] as string | undefined);
  if (number === undefined || name === undefined || name.includes(number)) return name ?? number;
  return `${number} ${name}`;
}

interface RowCode {
  readonly value?: Code;
  readonly thing?: KnownThing;
  readonly broken?: string;
  readonly doubts: readonly string[];
}

function codeOf({ register, target, codes, byId }: Planning, cells: RowCells): RowCode {
  const raw = cells.parts['number'] as string | undefined;
  if (raw === undefined) return { doubts: [] };
  const code = parseCode(raw);
  if (isProblem(code))
    return code.says.includes('slip') ? { doubts: [`${code.says} It is kept as a number of your own.`] } : { doubts: [] };
  const line = codes.get(code);
  if (line !== undefined) return { doubts: [], broken: `The code ${code} is on line ${line} already; a code is one thing’s.` };
  const carrier = register.coded(code);
  const thing = carrier && draftIndex(carrier.ref) === undefined ? byId.get(carrier.ref) : undefined;
  if (carrier && carrier.noun !== target) return { doubts: [], broken: `The code ${code} is on a ${carrier.noun}’s label.` };
  if (thing) return { thing, value: code, doubts: [] };
  if (nounOfCode(code) !== target) return { doubts: [], broken: `The code ${code} is for a ${nounOfCode(code)}, not for a ${target}.` };
  return { value: code, doubts: [] };
}
