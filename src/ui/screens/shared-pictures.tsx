import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { addShared, dropShared, refusedShares, type SharedPicture, sharedPictures } from '../../actions/shared-pictures.ts';
import type { ThingId } from '../../domain/brand.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { NOUNS } from '../../domain/noun.ts';
import { isProblem, type Problem, problem } from '../../domain/problem.ts';
import { thingOf } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { recentThings } from '../../views/recent-things.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Empty, ProblemNote } from '../parts/note.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { route } from '../router.ts';
import { requestScan } from '../scan-request.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import '../styles/shared-pictures.css';

/** A period has no looks. */
const PICTURED = NOUNS.filter((noun) => noun !== 'period');
const RECENT = 4;
const TITLE = 'What is on this picture?';

/** Pictures sent here from another app: each is shown until somebody says what it is of. */
export function SharedScreen(_: object) {
  const [found, setFound] = useState<readonly SharedPicture[] | Problem | undefined>();
  useEffect(() => {
    void sharedPictures().then(setFound);
  }, []);
  const refused = refusedShares(route.value.query);
  const [picture, ...others] = isProblem(found) ? [] : (found ?? []);
  const notice = refused && <ProblemNote problem={refused} />;
  if (picture)
    return (
      <OnePicture key={picture.address} picture={picture} waiting={others.length} onDone={() => setFound(others)}>
        {notice}
      </OnePicture>
    );
  return (
    <Screen title={TITLE}>
      {notice}
      {!found && <p class="wait">Fetching the picture…</p>}
      {isProblem(found) && <ProblemNote problem={found} />}
      {found && !isProblem(found) && (
        <Empty title="No picture waits here" actions={<LinkButton href="#/">To the shelves</LinkButton>}>
          <p>Share a photo with Mouldkeep from the phone’s gallery, and say here what it is of.</p>
        </Empty>
      )}
    </Screen>
  );
}

interface OneProps {
  picture: SharedPicture;
  waiting: number;
  onDone: () => void;
  children: ComponentChildren;
}

function OnePicture({ picture, waiting, onDone, children }: OneProps) {
  const deps = useDeps();
  const shelf = useShelf();
  const save = useSave();
  const { values, set, clear, problem } = useDraft('shared', () => ({ of: '' }));
  const chosen = thingOf(shelf, values.of);
  const recent = recentThings(shelf, PICTURED, RECENT);
  const done = () => {
    clear();
    onDone();
  };
  return (
    <Screen
      title={TITLE}
      actions={
        <>
          <Button
            look="main"
            disabled={!chosen || save.isBusy}
            onClick={() =>
              save.run(
                () => addShared(deps, picture, values.of as ThingId),
                () => {
                  done();
                  return `Photo added to ${titleOf(shelf, chosen)}.`;
                },
              )
            }
          >
            Add the photo
          </Button>
          <Button onClick={() => void dropShared(picture).then(done)}>Do not keep it</Button>
        </>
      }
    >
      {children}
      <div class="shared">
        <SharedLook blob={picture.blob} />
        {waiting > 0 && <p>{sayCount(waiting, 'more picture')} after this one.</p>}
        <ThingPicker
          label="The thing it is of"
          nouns={PICTURED.filter((noun) => noun !== 'place')}
          value={values.of}
          onPick={(of) => set({ of })}
          hasScan={false}
          hint={chosen ? '' : 'Scan its label, or type a few letters of its name.'}
        />
        {!chosen && (
          <>
            <Button
              onClick={() =>
                requestScan({
                  purpose: 'Scan what is on the picture',
                  onThing: (thing) => {
                    set({ of: thing.id });
                    return undefined;
                  },
                })
              }
            >
              <Icon name="scan" /> Scan its label
            </Button>
            {recent.length > 0 && (
              <section>
                <h2 class="section">Worked with lately</h2>
                <ul class="picker-list">
                  {recent.map((choice) => (
                    <li key={choice.id}>
                      <button type="button" class="picker-choice" onClick={() => set({ of: choice.id })}>
                        <span class="row-title">{choice.title}</span>
                        {choice.detail && <span class="row-detail">{choice.detail}</span>}
                      </button>
                    </li>
                  ))}
                </ul>
              </section>
            )}
          </>
        )}
        {problem && <ProblemNote problem={problem} />}
        <SaveProblem save={save} />
      </div>
    </Screen>
  );
}

function SharedLook({ blob }: { blob: Blob }) {
  const [url, setUrl] = useState<string | undefined>();
  const [isBroken, setBroken] = useState(false);
  useEffect(() => {
    const made = URL.createObjectURL(blob);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  if (isBroken)
    return (
      <ProblemNote
        problem={problem('This device cannot read that picture.', 'It is still where it was shared from. Share it as JPEG or PNG instead.')}
      />
    );
  return url ? <img class="shared-look" src={url} alt="What was shared" onError={() => setBroken(true)} /> : null;
}
