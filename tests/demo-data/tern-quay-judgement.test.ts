import { expect, it } from 'vitest';
import { generationOf } from '../../src/domain/lineage/generation.ts';
import type { Mould } from '../../src/domain/shelf.ts';
import { pairsOf } from '../../src/domain/size/learn.ts';
import { forecastAll, sumLives } from '../../src/domain/survival/life-sums.ts';
import { livesByRubber } from '../../src/domain/survival/rubber-lives.ts';
import { remakeAsk, remakeList } from '../../src/views/remake-first.ts';
import { LAST_DAY, shelf } from './read-demo.ts';

const lives = livesByRubber(shelf);

it('has ends of every rubber, for every reason', () => {
  expect(lives.filter(({ ends }) => ends >= 5)).toHaveLength(4);
  expect(sumLives(lives[0] as (typeof lives)[number]).curve.steps.length).toBeGreaterThanOrEqual(8);
  const reasons = new Set([...shelf.things.mould.values()].map(({ retired }) => retired?.reason));
  expect([...reasons]).toEqual(expect.arrayContaining(['worn out', 'torn', 'dud', 'lost', 'replaced']));
});

it('has moulds to make again, one that cannot be made and one that is the last of its kind', () => {
  const ask = remakeAsk(shelf);
  const posteriors = ask.names.map((name) => sumLives(lives.find(({ group }) => group === name) ?? { lives: [], expected: [] }).posterior);
  const { items } = remakeList(shelf, ask, forecastAll(posteriors, ask.moulds), LAST_DAY);
  expect(items.length).toBeGreaterThanOrEqual(3);
  expect(items.some(({ source, moulds }) => !source.master && moulds.length === 0)).toBe(true);
  expect(items.some(({ isLast }) => isLast)).toBe(true);
  expect(items.some(({ source }) => source.isSound)).toBe(true);
});

it('has a copy of a copy of a copy, and pieces measured where their masters were', () => {
  const moulds = [...shelf.things.mould.values()] as Mould[];
  expect(Math.max(...moulds.map((mould) => generationOf(shelf, mould.id)?.count ?? 0))).toBeGreaterThanOrEqual(3);
  const measured = [...shelf.things.injectedWax.values(), ...shelf.things.casting.values()].flatMap((thing) =>
    pairsOf(shelf, thing as never),
  );
  expect(measured.length).toBeGreaterThanOrEqual(8);
  for (const { childMm, parentMm } of measured) expect(childMm).toBeLessThan(parentMm);
});
