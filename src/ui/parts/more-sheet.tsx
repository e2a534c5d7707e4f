import { useState } from 'preact/hooks';
import { correct } from '../../actions/correct.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { isStanding } from '../../domain/filling.ts';
import { MANY_OF } from '../../domain/plans/record-many.ts';
import type { Thing } from '../../domain/shelf.ts';
import { makeFrom } from '../make-from.ts';
import { to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button, LinkButton } from './button.tsx';
import { PhotoField } from './photos.tsx';
import { RetireSheet } from './retire-sheet.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

/** What is done with a thing less often, and retiring it. */
export function MoreSheet({ thing, title, onClose }: { thing: Thing; title: string; onClose: () => void }) {
  const [isRetiring, setRetiring] = useState(false);
  return isRetiring ? (
    <RetireSheet thing={thing} onClose={onClose} />
  ) : (
    <More thing={thing} title={title} onRetire={() => setRetiring(true)} onClose={onClose} />
  );
}

interface MoreProps {
  thing: Thing;
  title: string;
  onRetire: () => void;
  onClose: () => void;
}

function More({ thing, title, onRetire, onClose }: MoreProps) {
  const deps = useDeps();
  const save = useSave();
  const addPhotos = (pictures: readonly Sha256[]) =>
    save.run(
      () => correct(deps, { of: thing.id, fields: {}, pictures }),
      () => {
        onClose();
        return 'Photo added.';
      },
    );
  return (
    <Sheet title={title} onClose={onClose}>
      <SaveProblem save={save} />
      <div class="sheet-list">
        {linksOf(thing).map(({ word, href }) => (
          <LinkButton key={word} href={href}>
            {word}
          </LinkButton>
        ))}
        {thing.retired ? (
          <p class="field-hint">Out of use: {thing.retired.reason}. To use it again, take that line of its history back.</p>
        ) : (
          <Button onClick={onRetire}>Retire</Button>
        )}
        <PhotoField pictures={[]} onChange={(pictures) => void addPhotos(pictures)} />
      </div>
    </Sheet>
  );
}

const MEASURED: readonly string[] = ['master', 'mould', 'injectedWax', 'casting'];

function linksOf(thing: Thing): readonly { readonly word: string; readonly href: string }[] {
  const { id, noun } = thing;
  const links: { word: string; href: string }[] = [];
  const add = (word: string, href: string) => links.push({ word, href });
  if (noun === 'mould' || noun === 'master') add('Inspect', to([noun === 'mould' ? 'mould' : 'thing', id, 'inspect']));
  if (isStanding(noun)) add('Move or put away', to(['move'], { things: id }));
  if (isStanding(noun)) add('Lend it', to(['move'], { things: id, lend: 'yes' }));
  if (noun === 'place' && thing.kind === 'cabinet') add('Change the drawing', to(['draw', id]));
  if (noun === 'place' && thing.kind === 'room') add('Rooms and cabinets', to(['rooms']));
  if (noun === 'place' && thing.kind !== 'away') add('Move this place', to(['move'], { things: id }));
  add('Edit', to(['edit', id]));
  if (thing.pictures || thing.looks) add('Its pictures, by date', to(['pictures', id]));
  if (noun !== 'period' && noun !== 'want') add('Print its label', to(['labels'], { things: id }));
  if (noun === 'place' && thing.kind !== 'away') add('Print labels for what is in it', to(['labels'], { place: id }));
  links.push(...makeFrom(thing));
  if (MEASURED.includes(noun)) add('Measure it', to(['measure', id]));
  if (MEASURED.includes(noun)) add('See its lineage', to(['lineage', id]));
  if (noun === 'design') {
    add('Record a master of it', to(['new', 'master'], { design: id }));
    add('Record a want of it', to(['new', 'want'], { design: id }));
  }
  if (MANY_OF.some((each) => each === noun) && !(noun === 'place' && thing.kind === 'away'))
    add('Several more like it, numbered on', to(['many', id]));
  if (noun !== 'place' && noun !== 'period') add('Record one like it', to(['new', noun], { like: id }));
  return links;
}
