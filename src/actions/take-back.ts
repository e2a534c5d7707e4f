import type { Entry } from '../domain/entry.ts';
import { planWithdraw, type Withdraw } from '../domain/plans/withdraw.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';
import { TAKEN_BACK } from './withdraw.ts';

/** Takes the action an entry belongs to back, when nothing that came later would be left in the air, and what goes with it was read. */
export async function takeBack({ keeper }: Pick<Deps, 'keeper'>, command: Omit<Withdraw, 'whole'>): Promise<readonly Entry[] | Problem> {
  const { id, step } = command.entry;
  const whole = await keeper.action(step ?? id);
  return keeper.act((shelf, desk) => (keeper.isTakenBack(step ?? id) ? TAKEN_BACK : planWithdraw(shelf, desk, { ...command, whole })));
}
