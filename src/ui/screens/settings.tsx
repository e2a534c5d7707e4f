import { useEffect, useState } from 'preact/hooks';
import type { Keeping } from '../../actions/deps.ts';
import { joinJournalFile } from '../../actions/join-journal.ts';
import { BACKUP_ON, saveJournal } from '../../actions/save-journal.ts';
import { isProblem } from '../../domain/problem.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Choices } from '../parts/field.tsx';
import { Screen } from '../parts/screen.tsx';
import { say, sayProblem } from '../parts/toast.tsx';
import { useDeps, useShelf } from '../studio.tsx';

const THEMES = [
  { value: 'auto', word: 'As the phone' },
  { value: 'light', word: 'Light' },
  { value: 'dark', word: 'Dark' },
] as const;
type Theme = (typeof THEMES)[number]['value'];

function megabytes(bytes: number | undefined): string {
  return bytes === undefined ? 'not told by this browser' : `${(bytes / 1e6).toFixed(1)} MB`;
}

/** This device: how safely the shelves are kept, the look, and repair. */
export function SettingsScreen() {
  const deps = useDeps();
  const shelf = useShelf();
  const [keeping, setKeeping] = useState<Keeping>({});
  const [isBusy, setBusy] = useState(false);
  const [, setBackups] = useState(0);
  const [theme, setTheme] = useState<Theme>(() => deps.settings.get<Theme>('theme') ?? 'auto');
  const look = () => void deps.keeping().then(setKeeping);
  useEffect(look, [deps]);
  const lastBackup = deps.settings.get<string>(BACKUP_ON);

  return (
    <Screen title="This device">
      <section class="card">
        <h2>How safely it is kept</h2>
        <dl class="facts">
          <dt>Entries</dt>
          <dd>{shelf.entries.toLocaleString('en-GB')}</dd>
          <dt>Stored</dt>
          <dd>
            {megabytes(keeping.usedBytes)} of {megabytes(keeping.quotaBytes)}
          </dd>
          <dt>May the browser clear it?</dt>
          <dd>
            {keeping.isPersistent === undefined
              ? 'This browser does not say.'
              : keeping.isPersistent
                ? 'No: it has promised to keep it.'
                : 'Yes, when the phone runs out of room.'}
          </dd>
          <dt>Last saved copy</dt>
          <dd>{lastBackup ?? 'None has been saved from this device.'}</dd>
        </dl>
        {keeping.isPersistent === false && (
          <div class="button-row">
            <Button
              onClick={async () => {
                const isGranted = await deps.askToPersist();
                say(
                  isGranted
                    ? 'The browser has promised to keep the shelves.'
                    : 'The browser did not promise it. Installing Mouldkeep on the home screen usually helps.',
                );
                look();
              }}
            >
              Ask the browser to keep it
            </Button>
          </div>
        )}
      </section>
      <InstallCard />
      <section class="card">
        <h2>Look</h2>
        <Choices
          legend="Light or dark"
          options={THEMES}
          picked={[theme]}
          onPick={([picked]) => {
            const next = picked ?? 'auto';
            setTheme(next);
            deps.settings.set('theme', next);
            if (next === 'auto') delete document.documentElement.dataset['theme'];
            else document.documentElement.dataset['theme'] = next;
          }}
        />
      </section>
      <section class="card">
        <h2>A copy elsewhere</h2>
        <p>
          The journal holds every entry, as text. Photographs are not in it yet. Keep a copy off this device: a lost phone takes its shelves
          with it.
        </p>
        <div class="button-row">
          <Button
            onClick={async () => {
              const outcome = await saveJournal(deps);
              if (isProblem(outcome)) sayProblem(outcome);
              else say(`Saved a journal of ${outcome.toLocaleString('en-GB')} entries.`);
              setBackups((count) => count + 1);
            }}
          >
            Save the journal
          </Button>
          <label class="button button-plain file-button">
            Join a saved journal
            <input
              type="file"
              accept=".txt,.jsonl,text/plain"
              onChange={async (event) => {
                const file = event.currentTarget.files?.[0];
                event.currentTarget.value = '';
                if (!file) return;
                const outcome = await joinJournalFile(deps, file);
                if (isProblem(outcome)) sayProblem(outcome);
                else
                  say(
                    `The journal holds ${outcome.held.toLocaleString('en-GB')} entries; ${outcome.added.toLocaleString('en-GB')} were new here.`,
                  );
              }}
            />
          </label>
        </div>
      </section>
      <section class="card">
        <h2>Lists</h2>
        <LinkButton href="#/bring-in">Bring in my list</LinkButton>
      </section>
      <section class="card">
        <h2>Repair</h2>
        <p>Adds the whole journal up again, in case a count on the shelf looks wrong. Nothing is lost by it.</p>
        <Button
          disabled={isBusy}
          onClick={async () => {
            setBusy(true);
            const outcome = await deps.keeper.refold();
            setBusy(false);
            if (isProblem(outcome)) sayProblem(outcome);
            else say(`Added up ${deps.keeper.shelf().entries.toLocaleString('en-GB')} entries afresh.`);
          }}
        >
          {isBusy ? 'Adding up…' : 'Add up the journal afresh'}
        </Button>
      </section>
    </Screen>
  );
}

function InstallCard() {
  const { install } = useDeps();
  const [canAsk, setCanAsk] = useState(() => install.canAsk());
  useEffect(() => install.onChange(setCanAsk), [install]);
  if (install.isInstalled()) return null;
  return (
    <section class="card">
      <h2>On the home screen</h2>
      {canAsk ? (
        <Button onClick={() => void install.ask()}>Put Mouldkeep on the home screen</Button>
      ) : (
        <p>Open the browser’s own menu (on an iPhone: the share button) and choose “Add to home screen”.</p>
      )}
    </section>
  );
}
