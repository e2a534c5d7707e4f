import { useEffect, useRef, useState } from 'preact/hooks';
import { correct } from '../../actions/correct.ts';
import type { Sha256 } from '../../domain/brand.ts';
import type { Entry } from '../../domain/entry.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { type Thing, thingOf } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { type DatedPicture, picturesInTime } from '../../views/pictures-in-time.ts';
import { Button } from '../parts/button.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { Empty } from '../parts/note.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { PictureLines } from '../parts/picture-lines.tsx';
import { PicturePane } from '../parts/picture-pane.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { useUnits } from '../use-units.ts';
import { useZoom } from '../use-zoom.ts';
import '../styles/pictures.css';

/** All of a thing's history: its pictures can be as old as itself. */
const ALL = 1_000_000;

/** The pictures of a thing by date, two of them side by side, to see the wear. */
export function PicturesScreen({ id }: { id: string }) {
  const { keeper } = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const thing = thingOf(shelf, id);
  const [entries, setEntries] = useState<readonly Entry[] | undefined>();
  useEffect(() => {
    let isGone = false;
    keeper.history(id as Thing['id'], ALL).then(
      (history) => !isGone && setEntries(history.entries),
      () => !isGone && setEntries([]),
    );
    return () => {
      isGone = true;
    };
  }, [keeper, id, shelf]);
  if (!thing) return <NoThing word="thing" />;
  return (
    <Screen title={`Pictures: ${titleOf(shelf, thing)}`}>
      {!entries ? (
        <p class="wait">Looking for its pictures…</p>
      ) : (
        <Pictures thing={thing} pictures={picturesInTime(shelf, thing, entries, units)} />
      )}
    </Screen>
  );
}

function Pictures({ thing, pictures }: { thing: Thing; pictures: readonly DatedPicture[] }) {
  // By name, so that a picture taken off or added does not turn the others.
  const [chosen, setChosen] = useState<{ readonly left?: Sha256 | undefined; readonly right?: Sha256 | undefined }>({});
  const hands = useZoom();
  const placeOf = (sha: Sha256 | undefined, otherwise: number) => {
    const at = pictures.findIndex((each) => each.sha === sha);
    return at < 0 ? otherwise : at;
  };
  const [left, right] = [placeOf(chosen.left, 0), placeOf(chosen.right, pictures.length - 1)];
  const show = (side: 'left' | 'right', at: number) => setChosen((was) => ({ ...was, [side]: pictures[at]?.sha }));
  const turnBy = (side: 'left' | 'right', step: number) =>
    show(side, Math.min(pictures.length - 1, Math.max(0, (side === 'left' ? left : right) + step)));
  const isPair = pictures.length > 1;
  const keys: Readonly<Record<string, (side: 'left' | 'right') => void>> = {
    ArrowLeft: (side) => turnBy(side, -1),
    ArrowRight: (side) => turnBy(side, 1),
    '+': () => hands.by(1.5),
    '-': () => hands.by(1 / 1.5),
    '0': () => hands.reset(),
  };
  useKeys(keys);
  return (
    <>
      {pictures.length === 0 && (
        <Empty title="No pictures yet">
          <p>A picture of it new, and one now and then, show how it wears.</p>
        </Empty>
      )}
      {pictures.length > 0 && (
        <section class={isPair ? 'panes panes-two' : 'panes'} aria-label={isPair ? 'Two pictures side by side' : 'The picture'}>
          <PicturePane side="Left" pictures={pictures} at={left} onTurn={(at) => show('left', at)} hands={hands} />
          {isPair && <PicturePane side="Right" pictures={pictures} at={right} onTurn={(at) => show('right', at)} hands={hands} />}
        </section>
      )}
      {pictures.length > 0 && (
        <div class="button-row pane-tools">
          <Button aria-label="Smaller" disabled={hands.zoom.scale <= 1} onClick={() => hands.by(1 / 1.5)}>
            −
          </Button>
          <Button aria-label="Larger" onClick={() => hands.by(1.5)}>
            +
          </Button>
          <Button disabled={hands.zoom.scale <= 1} onClick={hands.reset}>
            Whole
          </Button>
          <span class="row-detail">{sayCount(pictures.length, 'picture')}, oldest first</span>
        </div>
      )}
      <AddPictures thing={thing} />
      <PictureLines thing={thing} pictures={pictures} onShow={isPair ? show : undefined} />
    </>
  );
}

/** Arrows turn the right picture, with Shift the left one; plus, minus and nought magnify. Not while something is typed or a sheet is open. */
function useKeys(keys: Readonly<Record<string, (side: 'left' | 'right') => void>>): void {
  const latest = useRef(keys);
  latest.current = keys;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const run = latest.current[event.key];
      const isTyping = event.target instanceof Element && event.target.closest('input, textarea, select, dialog') !== null;
      if (!run || isTyping || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      run(event.shiftKey ? 'left' : 'right');
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
}

function AddPictures({ thing }: { thing: Thing }) {
  const deps = useDeps();
  const save = useSave();
  return (
    <>
      <SaveProblem save={save} />
      <PhotoField
        pictures={[]}
        onChange={(pictures) =>
          void save.run(
            () => correct(deps, { of: thing.id, fields: {}, pictures }),
            () => (pictures.length === 1 ? 'Photo added.' : `${pictures.length} photos added.`),
          )
        }
      />
    </>
  );
}
