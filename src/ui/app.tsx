import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useState } from 'preact/hooks';
import { arePassed } from './doors.ts';
import { Pane } from './pane.tsx';
import { Bar } from './parts/bar.tsx';
import { lazy } from './parts/lazy.tsx';
import { Screen } from './parts/screen.tsx';
import { ToastPart } from './parts/toast.tsx';
import { UpdateNotice } from './parts/update-notice.tsx';
import { isOnward, listBehind, parseRoute, route } from './router.ts';
import { DoorsScreen } from './screens/doors.tsx';
import { ShelvesScreen } from './screens/shelves.tsx';
import { spellings } from './spelling.ts';
import { useDeps } from './studio.tsx';
import { afterPaint } from './turns.ts';
import { useNextTask } from './use-late.ts';
import { useIsDesk, useToldHeight } from './use-size.ts';
import { attentionSeen, useWatchAttention } from './watch-attention.ts';
import { useWatchSmall } from './watch-small.ts';

const AttentionScreen = lazy(async () => (await import('./screens/attention.tsx')).AttentionScreen);
const BackupScreen = lazy(async () => (await import('./screens/backup.tsx')).BackupScreen);
const BringInScreen = lazy(async () => (await import('./screens/bring-in.tsx')).BringInScreen);
const DrawScreen = lazy(async () => (await import('./screens/draw.tsx')).DrawScreen);
const EditScreen = lazy(async () => (await import('./screens/edit.tsx')).EditScreen);
const FailedScreen = lazy(async () => (await import('./screens/failed.tsx')).FailedScreen);
const InspectScreen = lazy(async () => (await import('./screens/inspect.tsx')).InspectScreen);
const Keyboard = lazy(async () => (await import('./parts/keyboard.tsx')).Keyboard, null);
const LineageScreen = lazy(async () => (await import('./screens/lineage.tsx')).LineageScreen);
const ManyScreen = lazy(async () => (await import('./screens/many.tsx')).ManyScreen);
const LabelsScreen = lazy(async () => (await import('./screens/labels.tsx')).LabelsScreen);
const MeasureScreen = lazy(async () => (await import('./screens/measure.tsx')).MeasureScreen);
const MouldScreen = lazy(async () => (await import('./screens/mould.tsx')).MouldScreen);
const LifeScreen = lazy(async () => (await import('./screens/life.tsx')).LifeScreen);
const MoveScreen = lazy(async () => (await import('./screens/move.tsx')).MoveScreen);
const NewScreen = lazy(async () => (await import('./screens/new.tsx')).NewScreen);
const PlaceScreen = lazy(async () => (await import('./screens/place.tsx')).PlaceScreen);
const PicturesScreen = lazy(async () => (await import('./screens/pictures.tsx')).PicturesScreen);
const RoomsScreen = lazy(async () => (await import('./screens/rooms.tsx')).RoomsScreen);
const RemakeScreen = lazy(async () => (await import('./screens/remake.tsx')).RemakeScreen);
const RescuedNotice = lazy(async () => (await import('./parts/rescued-notice.tsx')).RescuedNotice, null);
const RunScreen = lazy(async () => (await import('./screens/run.tsx')).RunScreen);
const ScanScreen = lazy(async () => (await import('./screens/scan.tsx')).ScanScreen);
const SharedScreen = lazy(async () => (await import('./screens/shared-pictures.tsx')).SharedScreen);
const SharedNotice = lazy(async () => (await import('./parts/shared-notice.tsx')).SharedNotice, null);
const SettingsScreen = lazy(async () => (await import('./screens/settings.tsx')).SettingsScreen);
const SizeScreen = lazy(async () => (await import('./screens/size.tsx')).SizeScreen);
const ThingScreen = lazy(async () => (await import('./screens/thing.tsx')).ThingScreen);
const TraceScreen = lazy(async () => (await import('./screens/trace.tsx')).TraceScreen);
const WaxScreen = lazy(async () => (await import('./screens/wax.tsx')).WaxScreen);
const WhereIsScreen = lazy(async () => (await import('./screens/where-is.tsx')).WhereIsScreen);

/** What a tap on the shelves most likely opens. */
const NEXT = [WhereIsScreen, MouldScreen, PlaceScreen];

/** As soon as the shelves are on the glass, one after another, so that taps get their turn between them. */
async function fetchNext(): Promise<void> {
  for (const screen of NEXT) await screen.fetch();
}

/** Screens that show one thing, or something done to it: a desk keeps the list they were opened from beside them. */
const BESIDE_LISTS = ['place', 'mould', 'thing', 'new', 'many', 'edit', 'move'];

function mouldScreen(id: string, verb: string | undefined): ComponentChildren {
  if (verb === 'run') return <RunScreen id={id} />;
  if (verb === 'failed') return <FailedScreen id={id} />;
  if (verb === 'inspect') return <InspectScreen id={id} />;
  return <MouldScreen id={id} />;
}

function screenAt([name = '', first = '', second]: readonly string[]): ComponentChildren {
  switch (name) {
    case '':
    case 'shelves':
      return <ShelvesScreen cabinet={first} />;
    case 'where':
      return <WhereIsScreen />;
    case 'scan':
      return <ScanScreen />;
    case 'wax':
      return <WaxScreen />;
    case 'attention':
      return <AttentionScreen />;
    case 'place':
      return <PlaceScreen id={first} />;
    case 'mould':
      return mouldScreen(first, second);
    case 'thing':
      return second === 'inspect' ? <InspectScreen id={first} /> : <ThingScreen id={first} />;
    case 'life':
      return <LifeScreen />;
    case 'remake':
      return <RemakeScreen />;
    case 'move':
      return <MoveScreen />;
    case 'lineage':
      return <LineageScreen id={first} />;
    case 'trace':
      return <TraceScreen id={first} />;
    case 'measure':
      return <MeasureScreen id={first} />;
    case 'size':
      return <SizeScreen />;
    case 'many':
      return <ManyScreen id={first} />;
    case 'new':
      return <NewScreen noun={first} />;
    case 'draw':
      return <DrawScreen id={first} />;
    case 'rooms':
      return <RoomsScreen />;
    case 'edit':
      return <EditScreen id={first} />;
    case 'backup':
      return <BackupScreen />;
    case 'pictures':
      return <PicturesScreen id={first} />;
    case 'bring-in':
      return <BringInScreen />;
    case 'labels':
      return <LabelsScreen />;
    case 'shared':
      return <SharedScreen />;
    case 'settings':
      return <SettingsScreen />;
    case 'c':
      // The link form of a label opens here.
      return <ScanScreen code={first} />;
    default:
      return (
        <Screen title="There is no such screen" hasBack={false}>
          <p>The address may have been cut short or mistyped. Nothing was changed.</p>
          <a class="button button-main" href="#/">
            To the shelves
          </a>
        </Screen>
      );
  }
}

/** The frame around the screens, and first for itself, unless a likeness of the screen stood in its place. A screen starts anew when its address changes. */
export function App({ isAtOnce }: { isAtOnce: boolean }) {
  const hasScreen = useNextTask(isAtOnce);
  const deps = useDeps();
  const [hasEntered, setEntered] = useState(
    () => deps.isDemo || deps.keeper.shelf().entries > 0 || deps.settings.get<boolean>('entered') === true,
  );
  useTheme();
  useEffect(() => {
    if (hasEntered) afterPaint(() => void fetchNext());
  }, [hasEntered]);
  const isDesk = useIsDesk();
  const here = route.value;
  const { parts } = here;
  const key = parts.join('/');
  const behind = isDesk && BESIDE_LISTS.includes(parts[0] ?? '') ? listBehind() : '';
  const list = useMemo(() => parseRoute(behind), [behind]);
  const listKey = list.parts.join('/');
  const hasList = behind !== '' && listKey !== key;
  useLayoutEffect(() => {
    if (isOnward()) window.scrollTo(0, 0);
  }, [key]);
  // Whoever came by a backup's or a list's own address went through no door.
  if (!hasEntered && deps.keeper.shelf().entries === 0 && !arePassed(parts[0])) return <DoorsScreen onEntered={() => setEntered(true)} />;
  return (
    <div class="app" key={spellings.value}>
      <Notices isBesideList={hasList} />
      <div class={hasList ? 'panes-space panes' : 'panes-space'}>
        {hasScreen && hasList && <Pane key={listKey} here={list} isBeside isDesk screenAt={screenAt} />}
        {hasScreen && <Pane key={key} here={here} isDesk={isDesk} screenAt={screenAt} />}
      </div>
      <ToastPart />
      <CountedBar />
      <AttentionWatch />
      <LateKeyboard />
    </div>
  );
}

/** What stands above every screen. Only a list beside another screen has to know how high it is. */
function Notices({ isBesideList }: { isBesideList: boolean }) {
  const { isDemo } = useDeps();
  const notices = useToldHeight<HTMLElement>('--notices-height', isBesideList);
  return (
    <aside ref={notices} class="app-notices" aria-label="Notices">
      {isDemo && (
        <p class="demo-line">
          <span>Demo: Tern Quay Foundry</span>
          <a href="?" aria-label="Leave the demo">
            Leave
          </a>
        </p>
      )}
      <UpdateNotice />
      {!isDemo && <RescuedNotice />}
      {!isDemo && <SharedNotice />}
    </aside>
  );
}

/** The bar with the count of what calls for action, which is also the icon's. */
function CountedBar() {
  const { badge } = useDeps();
  const counts = attentionSeen.value?.counts;
  const count = counts && counts.act + counts.soon;
  useEffect(() => {
    if (count !== undefined) badge(count);
  }, [badge, count]);
  return <Bar attention={count ?? 0} />;
}

/** Draws nothing; apart, so that the frame is not drawn again with every change of the shelf. */
function AttentionWatch() {
  useWatchAttention();
  useWatchSmall();
  return null;
}

/** Keys and scanners that type are heard as soon as there is something to see. */
function LateKeyboard() {
  const [isSeen, setSeen] = useState(false);
  useEffect(() => afterPaint(() => setSeen(true)), []);
  return isSeen ? <Keyboard /> : null;
}

function useTheme(): void {
  const { settings } = useDeps();
  useEffect(() => {
    const theme = settings.get<string>('theme');
    if (theme === 'light' || theme === 'dark') document.documentElement.dataset['theme'] = theme;
    // In parts of what the browser or the phone is set to, and so on top of it.
    document.documentElement.style.fontSize = settings.get<string>('text-size') ?? '';
  }, [settings]);
}
