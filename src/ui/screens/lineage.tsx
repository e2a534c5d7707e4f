import { useLayoutEffect, useMemo, useState } from 'preact/hooks';
import { REACHES, type Reach } from '../../domain/lineage/family.ts';
import type { Picture } from '../../domain/lineage/layout.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { thingOf } from '../../domain/shelf.ts';
import { NOUN_WORD } from '../../domain/title.ts';
import { drawLineage, type LineagePage, lineagePageOf } from '../../views/lineage-page.ts';
import { addressOf } from '../address.ts';
import { LinkButton } from '../parts/button.tsx';
import { Choices } from '../parts/field.tsx';
import { LineageOutline } from '../parts/lineage-outline.tsx';
import { LineagePicture } from '../parts/lineage-picture.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { useShelf } from '../studio.tsx';
import '../styles/lineage.css';

const REACH_WORD: Readonly<Record<Reach, string>> = { line: 'Its own line', family: 'The whole family' };

/** Where a thing came from and what came of it, as a picture and as a list. */
export function LineageScreen({ id }: { id: string }) {
  const shelf = useShelf();
  const [reach, setReach] = useState<Reach>('line');
  const page = useMemo(() => lineagePageOf(shelf, id, reach), [shelf, id, reach]);
  const thing = thingOf(shelf, id);
  if (!page || !thing) return <NoThing word="thing" />;
  return (
    <Screen title={`Lineage: ${page.title}`}>
      <p class="lineage-says">{page.says}</p>
      <Drawn page={page} here={id} />
      <Choices
        legend="How much of it"
        options={REACHES.map((value) => ({ value, word: REACH_WORD[value] }))}
        picked={[reach]}
        onPick={([picked]) => picked && setReach(picked)}
      />
      <Listed page={page} here={id} />
      <p>
        <LinkButton href={addressOf(thing)}>To the {NOUN_WORD[thing.noun]}</LinkButton>
      </p>
    </Screen>
  );
}

function Drawn({ page, here }: { page: LineagePage; here: string }) {
  const [drawn, setDrawn] = useState<Picture | Problem | undefined>();
  // Before this is painted: the worker takes a while to start.
  useLayoutEffect(() => {
    const drawing = drawLineage(page.drawn);
    void drawing.picture.then((picture) => picture && setDrawn(picture));
    return drawing.cancel;
  }, [page]);
  if (!drawn) return <p class="lineage-pane lineage-wait">Drawing it…</p>;
  return isProblem(drawn) ? <ProblemNote problem={drawn} /> : <LineagePicture picture={drawn} here={here} />;
}

/** Made only when opened: a family of five hundred is a long list. */
function Listed({ page, here }: { page: LineagePage; here: string }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The same as a list</summary>
      {isOpen && <LineageOutline branches={page.outline} here={here} />}
    </details>
  );
}
