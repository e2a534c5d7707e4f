import type { MouldId } from './brand.ts';
import { day, ref, shape, whole } from './field.ts';

/** Pieces that came from a mould after it may have begun to fail, until somebody looked at them: of how many it is certain, and of how many possible. */
export const doubt = shape({ mould: ref<MouldId>(), on: day, least: whole(0, 1_000_000), most: whole(1, 1_000_000) }, [
  'mould',
  'on',
  'least',
  'most',
]);
export type Doubt = Exclude<ReturnType<typeof doubt>, { readonly problem: true }>;

/** “all 12”, “3 to 8 of 12”, “up to 5 of 12”. */
export function doubtInWords({ least, most }: Pick<Doubt, 'least' | 'most'>, pieces: number): string {
  const total = Math.max(pieces, most);
  if (least >= total) return total === 1 ? 'the only one' : `all ${total}`;
  if (least === most) return `${most} of ${total}`;
  return least > 0 ? `${least} to ${most} of ${total}` : `up to ${most} of ${total}`;
}
