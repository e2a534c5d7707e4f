import { isLastOfItsKind } from '../../domain/last-of-kind.ts';
import { sayCount } from '../../domain/measure-words.ts';
import type { Mould } from '../../domain/shelf.ts';
import { useShelf } from '../studio.tsx';
import { Mark } from './mark.tsx';

/** What the reason for retiring a mould means for the reckoning of its rubber, and what is lost with it. */
export function MouldStakes({ mould }: { mould: Mould }) {
  return (
    <>
      {isLastOfItsKind(useShelf(), mould) && (
        <p>
          <Mark shape="last" word="last of its kind" tone="act" /> No other mould of it is left, and no master.
        </p>
      )}
      <p class="field-hint">
        The reason teaches how long its rubber lasts: worn out or torn ends its life at {sayCount(mould.shots, 'shot')}; a dud is left out;
        with any other reason it was still whole.
      </p>
    </>
  );
}
