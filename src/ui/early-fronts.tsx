import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Deps } from '../actions/deps.ts';
import type { Shelf } from '../domain/shelf.ts';
import { type CabinetFront, FRONTS_SHAPE, type Fronts, frontsOf } from '../views/fronts.ts';
import { cabinetOf, chosenBefore, currentOf, ELSEWHERE } from './chosen-cabinet.ts';
import { leaveDoors } from './doors.ts';
import { CabinetPager, pagerWidth } from './parts/cabinet-pager.tsx';
import { Screen } from './parts/screen.tsx';
import { go, route, to } from './router.ts';
import { useDeps } from './studio.tsx';
import { marksSeen } from './watch-attention.ts';

/** Keeps what was shown, when there is time, for the next start. */
export function useRemembered(fronts: Fronts | null): void {
  const { keeper } = useDeps();
  useEffect(() => {
    if (!fronts) return undefined;
    const timer = setTimeout(() => void keeper.remember('fronts', toRemember(fronts)), REMEMBER_MS);
    return () => clearTimeout(timer);
  }, [keeper, fronts]);
}
const REMEMBER_MS = 1500;

/** As text, which is read twice as quickly as records are, and each cabinet's fronts by themselves: of a thousand, those of two or three are shown. */
interface Remembered {
  readonly shape: typeof FRONTS_SHAPE;
  /** All but what the cabinets' fronts are. */
  readonly text: string;
  readonly fronts: readonly string[];
  /** How wide the cabinets stood, and the window, px. */
  readonly width: number;
  readonly within: number;
}

function toRemember(fronts: Fronts): Remembered {
  return {
    shape: FRONTS_SHAPE,
    text: JSON.stringify({ ...fronts, cabinets: fronts.cabinets.map((cabinet) => ({ ...cabinet, fronts: [] })) }),
    fronts: fronts.cabinets.map((cabinet) => JSON.stringify(cabinet.fronts)),
    width: pagerWidth(),
    within: window.innerWidth,
  };
}

/** What was remembered of last time, as long as nothing newer is known. */
let early: Fronts | undefined;
export const frontsOfLastTime = (): Fronts | undefined => early;

/** Whether an address is that of the shelves. */
const isShelves = ([name]: readonly string[]) => name === undefined || name === 'shelves';

/** Reckons what the first screen is going to show, so that drawing it is a shorter task. */
export function readyFronts(shelf: Shelf): void {
  if (!early && isShelves(route.value.parts)) frontsOf(shelf, marksSeen());
}

/** What was remembered, each cabinet's fronts read when they are asked for; undefined where it is of another shape or damaged. */
function frontsIn(remembered: Partial<Remembered>): Fronts | undefined {
  const { shape, text, fronts: texts } = remembered;
  if (shape !== FRONTS_SHAPE || typeof text !== 'string' || !Array.isArray(texts)) return undefined;
  try {
    const fronts = JSON.parse(text) as Fronts;
    const isWhole = fronts.cabinets.length > 0 && fronts.cabinets.length === texts.length;
    return isWhole ? { ...fronts, cabinets: fronts.cabinets.map((cabinet, at) => readLater(cabinet, texts[at] as string)) } : undefined;
  } catch {
    return undefined;
  }
}

function readLater(cabinet: CabinetFront, text: string): CabinetFront {
  let fronts: CabinetFront['fronts'] | undefined;
  return Object.defineProperty({ ...cabinet }, 'fronts', { get: () => (fronts ??= readOr([], text)) });
}

function readOr<T>(otherwise: T, text: string): T {
  try {
    return JSON.parse(text) as T;
  } catch {
    return otherwise;
  }
}

/**
 * Draws what the first screen showed last, before the shelf has been read; a drawer tapped meanwhile opens as soon as it has. It stands on a
 * stage of its own, so that whatever goes wrong with it, the app can be drawn. Gives how to clear it away; undefined when nothing was drawn.
 */
export function earlyFronts(root: HTMLElement, remembered: unknown, settings: Deps['settings'], studio: string): (() => void) | undefined {
  const { parts } = route.value;
  const { width = 0, within } = (remembered ?? {}) as Partial<Remembered>;
  const fronts = isShelves(parts) ? frontsIn((remembered ?? {}) as Partial<Remembered>) : undefined;
  if (!fronts) return undefined;
  const lastWidth = within === window.innerWidth ? width : 0;
  const stage = document.createElement('div');
  // Before anything is measured: what stands above the fronts would be laid out once more, and then again without it.
  leaveDoors();
  root.replaceChildren(stage);
  try {
    render(<EarlyShelves fronts={fronts} chosen={parts[1] ?? chosenBefore(settings, studio)} lastWidth={lastWidth} />, stage);
  } catch {
    stage.remove();
    return undefined;
  }
  early = fronts;
  return () => {
    render(null, stage);
    stage.remove();
  };
}

function EarlyShelves({ fronts, chosen, lastWidth }: { fronts: Fronts; chosen: string; lastWidth: number }) {
  const drawer = route.value.query.get('drawer') ?? '';
  const [current, turn] = useState(cabinetOf(fronts, drawer) ?? currentOf(fronts, chosen));
  return (
    <div class="app">
      <div class="app-notices" />
      <div class="app-screen">
        <Screen title="Shelves" hasBack={false}>
          <div class="shelves">
            <div class="shelves-fronts">
              <CabinetPager
                fronts={fronts}
                current={current}
                elsewhere={ELSEWHERE}
                picked={drawer}
                onPick={(id) => go(to(route.value.parts, { drawer: id, open: 'yes' }))}
                onTurn={turn}
                isAtOnce
                lastWidth={lastWidth}
              />
            </div>
          </div>
        </Screen>
      </div>
    </div>
  );
}
