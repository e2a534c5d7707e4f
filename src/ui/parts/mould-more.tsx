import { useState } from 'preact/hooks';
import { correct } from '../../actions/correct.ts';
import { retire } from '../../actions/retire.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { RETIREMENTS } from '../../domain/entry.ts';
import type { MouldPage } from '../../views/mould-page.ts';
import { to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button, LinkButton } from './button.tsx';
import { PhotoField } from './photos.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

/** What is done with a mould less often. */
export function MouldMore({ page, onClose }: { page: MouldPage; onClose: () => void }) {
  const deps = useDeps();
  const save = useSave();
  const [isRetiring, setRetiring] = useState(false);
  const { id } = page;
  const isRetired = page.states.some((state) => state.name === 'retired');

  const addPhotos = (pictures: readonly Sha256[]) =>
    save.run(
      () => correct(deps, { of: id, fields: {}, pictures }),
      () => {
        onClose();
        return 'Photo added.';
      },
    );

  if (isRetiring) {
    return (
      <Sheet title="Retire it: why?" onClose={onClose}>
        <p>It keeps its place and its history, and is not offered for runs any more.</p>
        <SaveProblem save={save} anyway="Retire it all the same" />
        <div class="sheet-list">
          {RETIREMENTS.map((reason) => (
            <Button
              key={reason}
              disabled={save.isBusy}
              onClick={() =>
                save.run(
                  (confirmed) => retire(deps, { of: id, reason, confirmed }),
                  () => {
                    onClose();
                    return `${page.title} is retired: ${reason}.`;
                  },
                )
              }
            >
              {reason}
            </Button>
          ))}
        </div>
      </Sheet>
    );
  }
  return (
    <Sheet title="More about this mould" onClose={onClose}>
      <SaveProblem save={save} />
      <div class="sheet-list">
        <LinkButton href={to(['mould', id, 'inspect'])}>Inspect</LinkButton>
        <LinkButton href={to(['move'], { things: id })}>Move or put away</LinkButton>
        <LinkButton href={to(['move'], { things: id, lend: 'yes' })}>Lend it</LinkButton>
        <LinkButton href={to(['edit', id])}>Edit</LinkButton>
        <LinkButton href={to(['new', 'mould'], { like: id })}>Record one like it</LinkButton>
        {!isRetired && <Button onClick={() => setRetiring(true)}>Retire</Button>}
        <PhotoField pictures={[]} onChange={(pictures) => void addPhotos(pictures)} />
      </div>
    </Sheet>
  );
}
