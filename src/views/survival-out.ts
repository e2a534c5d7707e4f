import type { ListOut } from './list-out.ts';
import type { SurvivalCard } from './survival-page.ts';

/** The steps of every rubber in one table; its first line is that of no shots, with what is said of the whole. */
export function survivalOut(cards: readonly SurvivalCard[]): ListOut {
  return {
    title: 'How long moulds last',
    headings: ['Rubber', 'Shots', 'Came so far', 'Ended', 'Still whole', '95 % range', 'What it says'],
    rows: cards.flatMap(({ title, says, facts, noFit, curve, table }) => [
      [
        title,
        '0',
        String(curve.moulds),
        '0',
        '100 %',
        '',
        [says, ...facts.map((fact) => `${fact.name}: ${fact.says}`), ...(noFit ? [`No fitted life: ${noFit}`] : [])].join('. '),
      ],
      ...table.map(({ shots, atRisk, ends, share, range }) => [title, String(shots), String(atRisk), String(ends), share, range, '']),
    ]),
  };
}
