import { expect, it } from 'vitest';
import { takeBack } from '../../src/actions/take-back.ts';
import { withdraw } from '../../src/actions/withdraw.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { aKeeper, tailRows } from '../support/keepers.ts';
import { first, newWax, waxNames } from '../support/plans.ts';

it('takes back once, however often it is asked, so that doing it again needs one tap too', async () => {
  const keeper = await aKeeper();
  const made = await first(keeper.act(newWax('violet', 1)));
  const [once, twice] = await Promise.all([withdraw({ keeper }, made.id), withdraw({ keeper }, made.id)]);
  expect([isProblem(once), isProblem(twice) && twice.says]).toEqual([false, 'That has been taken back already.']);
  const part = { ...made, id: `${made.id}x`, step: made.id } as unknown as Entry;
  expect(isProblem(await takeBack({ keeper }, { entry: part, confirmed: true }))).toBe(true);
  expect([await tailRows(keeper), waxNames(keeper.shelf())]).toEqual([2, []]);
  const back = (once as readonly Entry[])[0] as Entry;
  await withdraw({ keeper }, back.id);
  expect(waxNames(keeper.shelf())).toEqual(['violet']);
  expect(isProblem(await withdraw({ keeper }, made.id))).toBe(false);
  keeper.close();
});
