import { dropPhotos } from '../../actions/drop-photos.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { dayFrom } from '../../domain/day-words.ts';
import { useDeps } from '../studio.tsx';
import type { Draft } from '../use-draft.ts';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';

/** Says that a form was found half filled in from an earlier day, so that what it holds may be about something long done, or that it could not be read. */
export function KeptDraft<T extends object>({ draft, pictures = [] }: { draft: Draft<T>; pictures?: readonly Sha256[] }) {
  const deps = useDeps();
  const startAfresh = () => {
    draft.startAfresh();
    void dropPhotos(deps, pictures);
  };
  return (
    <>
      {draft.problem && <ProblemNote problem={draft.problem} />}
      {draft.keptOn && (
        <p class="kept-draft">
          Kept from {dayFrom(deps.today(), draft.keptOn)}
          <Button look="quiet" onClick={startAfresh}>
            Start afresh
          </Button>
        </p>
      )}
    </>
  );
}
