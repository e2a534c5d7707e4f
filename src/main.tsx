import type { Deps } from './actions/deps.ts';
import { startDemo } from './actions/start-demo.ts';
import { writerOf } from './actions/who.ts';
import { setBadge } from './device/badge.ts';
import { openDrafts } from './device/drafts.ts';
import { watchInstall } from './device/install.ts';
import { watchLaunchedFiles } from './device/launched-file.ts';
import { askPersist, keeping } from './device/persist.ts';
import { openSettings } from './device/settings.ts';
import { openTexts } from './device/texts.ts';
import { watchUpdates } from './device/updates.ts';
import type { Day } from './domain/brand.ts';
import { isProblem, problem } from './domain/problem.ts';
import { breathe } from './store/breaths.ts';
import { openKeeper } from './store/keeper.ts';
import { sayBroken } from './ui/doors.ts';
import { untouched } from './ui/turns.ts';

let minute = 0;
let day = '' as Day;

/** Asked several times for one tap, so it is told afresh once a minute: no day begins within one, wherever the phone is taken. */
function today(): Day {
  const ms = Date.now();
  if (minute !== Math.floor(ms / 60_000)) {
    minute = Math.floor(ms / 60_000);
    const now = new Date(ms);
    const two = (part: number) => String(part).padStart(2, '0');
    day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}` as Day;
  }
  return day;
}

function whenIdle(job: () => void): void {
  if ('requestIdleCallback' in window) window.requestIdleCallback(job, { timeout: 5000 });
  else setTimeout(job, 500);
}

/** The fitting moment: something of the studio's own has just been saved for the first time. */
function askOnceSomethingIsKept({ keeper, settings, askToPersist }: Deps): void {
  const stop = keeper.subscribe(() => {
    stop();
    if (settings.get('asked-to-persist')) return;
    settings.set('asked-to-persist', true);
    void askToPersist();
  });
}

/** ms between pages of the second copy: one after another without a pause they would keep the disk busy for whoever taps next. */
const COPY_PAUSE = 50;

const isDemo = new URLSearchParams(window.location.search).has('demo');
const name = isDemo ? 'mouldkeep-demo' : 'mouldkeep';
// The demo can be unpacked again.
const texts = isDemo ? undefined : openTexts(`mouldkeep-second-copy:${name}`);
const copy = { texts, today };

async function start(): Promise<void> {
  const root = document.getElementById('app');
  if (!root) return;
  const opening = openSettings();
  const staging = import('./ui/stage.tsx').then(({ stageIn }) => stageIn(root, copy));
  let who = (): string | undefined => undefined;
  void opening.then((opened) => {
    who = () => writerOf(opened);
  });
  const [settings, keeper, stage] = await Promise.all([
    opening,
    openKeeper({
      name,
      now: () => Date.now(),
      today,
      bytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
      by: () => who(),
      whenIdle,
      texts,
      rest: () => untouched(1000).then(() => new Promise<void>((done) => setTimeout(() => whenIdle(done), COPY_PAUSE))),
      early: async (fronts) => {
        const [stage, settings] = await Promise.all([staging, opening]);
        stage.early(fronts, settings, name);
      },
    }),
    staging,
  ]);
  if (isProblem(keeper)) {
    stage.broken(keeper);
    return;
  }
  if (isDemo) {
    await breathe();
    if (keeper.shelf().entries === 0) stage.wait('Unpacking the demo studio, Tern Quay Foundry…');
    await breathe();
    const outcome = await startDemo(keeper);
    if (isProblem(outcome)) {
      stage.broken(outcome);
      return;
    }
  }
  if (settings.get('spelling') === 'mold') (await import('./ui/words.ts')).spell('mold', () => keeper.shelf());
  const drafts = openDrafts(name, today, settings);
  const deps: Deps = {
    keeper,
    isDemo,
    today,
    settings,
    drafts,
    updates: watchUpdates(drafts.isHeld, whenIdle),
    install: watchInstall(),
    badge: isDemo ? () => undefined : setBadge,
    keeping,
    askToPersist: askPersist,
  };
  if (!isDemo) askOnceSomethingIsKept(deps);
  // A backup opened with the installed app; the opener takes it from there.
  watchLaunchedFiles(() => stage.go('#/backup?open=1'));
  document.addEventListener('visibilitychange', () => {
    // A phone may throw the app out of memory as soon as it is not seen.
    if (document.visibilityState === 'visible') void keeper.catchUp();
    else void keeper.writeCopy();
  });
  // Each in a task of its own: together they would hold up whoever taps what is drawn already.
  await breathe();
  stage.ready(keeper.shelf());
  await breathe();
  stage.app(deps);
}

/** Whatever goes wrong on the way is said, with how to try again: a blank page says nothing. */
start()
  .catch(async (error: unknown) => {
    const root = document.getElementById('app');
    if (!root) return;
    // A root of its own: what was half drawn into the other one cannot be drawn over.
    const fresh = document.createElement('div');
    root.replaceWith(fresh);
    const says = `Something went wrong while opening (${String(error).slice(0, 160)}).`;
    const { stageIn } = await import('./ui/stage.tsx');
    stageIn(fresh, copy).broken(problem(says, 'Everything saved before is untouched.'));
  })
  .catch(sayBroken);
