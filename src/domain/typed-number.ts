import { type Problem, problem } from './problem.ts';

/**
 * A figure as somebody types it: comma or point for decimals, blanks forgiven. Undefined when nothing was typed. A comma before three digits
 * stands for thousands in some hands and for decimals in others, so that is asked and not guessed.
 */
export function parseTypedNumber(typed: string): number | undefined | Problem {
  const bare = typed.replace(/[\s\u00a0\u202f]/g, '').replace('−', '-');
  if (bare === '') return undefined;
  if (!/^-?(\d+([.,]\d*)?|[.,]\d+)$/.test(bare)) return problem(`“${typed.trim().slice(0, 20)}” is not a number.`);
  const inTwoWays = /^(-?[1-9]\d{0,2}),(\d{3})$/.exec(bare);
  if (inTwoWays) {
    const [, whole, rest] = inTwoWays;
    return problem(`“${typed.trim()}” can be read in two ways. Write ${whole}${rest}, or ${whole}.${rest}.`);
  }
  const figure = Number(bare.replace(',', '.'));
  return Number.isFinite(figure) ? figure : problem(`“${typed.trim().slice(0, 20)}…” is more than can be kept.`);
}
