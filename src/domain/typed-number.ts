import { type Problem, problem } from './problem.ts';

/** A figure as somebody types it: comma or point for decimals, blanks forgiven. Undefined when nothing was typed. */
export function parseTypedNumber(typed: string): number | undefined | Problem {
  const bare = typed.replace(/[\s\u00a0\u202f]/g, '').replace('−', '-');
  if (bare === '') return undefined;
  if (!/^-?(\d+([.,]\d*)?|[.,]\d+)$/.test(bare)) return problem(`“${typed.trim().slice(0, 20)}” is not a number.`);
  const figure = Number(bare.replace(',', '.'));
  return Number.isFinite(figure) ? figure : problem(`“${typed.trim().slice(0, 20)}…” is more than can be kept.`);
}
