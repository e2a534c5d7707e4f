import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Deps } from '../actions/deps.ts';
import type { Shelf } from '../domain/shelf.ts';
import { FRONTS_SHAPE, type Fronts, frontsOf } from '../views/fronts.ts';
import { chosenBefore, currentOf, ELSEWHERE } from './chosen-cabinet.ts';
import { CabinetPager } from './parts/cabinet-pager.tsx';
import { Screen } from './parts/screen.tsx';
import { go, route, to } from './router.ts';
import { useDeps } from './studio.tsx';
import { marksSeen } from './watch-attention.ts';

/** Keeps what was shown, when there is time, for the next start. */
export function useRemembered(fronts: Fronts | null): void {
  const { keeper } = useDeps();
  useEffect(() => {
    if (!fronts) return undefined;
    // As text: a thousand fronts are read from it twice as quickly as from records.
    const timer = setTimeout(() => void keeper.remember('fronts', { shape: FRONTS_SHAPE, text: JSON.stringify(fronts) }), REMEMBER_MS);
    return () => clearTimeout(timer);
  }, [keeper, fronts]);
}
const REMEMBER_MS = 1500;

/** What was remembered of last time, as long as nothing newer is known. */
let early: Fronts | undefined;
export const frontsOfLastTime = (): Fronts | undefined => early;

/** Whether an address is that of the shelves. */
const isShelves = ([name]: readonly string[]) => name === undefined || name === 'shelves';

/** Reckons what the first screen is going to show, so that drawing it is a shorter task. */
export function readyFronts(shelf: Shelf): void {
  if (!early && isShelves(route.value.parts)) frontsOf(shelf, marksSeen());
}

function frontsIn(remembered: unknown): Fronts | undefined {
  const { shape, text } = (remembered ?? {}) as { readonly shape?: number; readonly text?: string };
  return shape === FRONTS_SHAPE && text !== undefined ? (JSON.parse(text) as Fronts) : undefined;
}

/**
 * Draws what the first screen showed last, before the shelf has been read; a drawer tapped meanwhile opens as soon as it has. It stands on a
 * stage of its own, so that whatever goes wrong with it, the app can be drawn. Gives how to clear it away; undefined when nothing was drawn.
 */
export function earlyFronts(root: HTMLElement, remembered: unknown, settings: Deps['settings'], studio: string): (() => void) | undefined {
  const { parts } = route.value;
  const fronts = isShelves(parts) ? frontsIn(remembered) : undefined;
  if (!fronts?.cabinets?.length) return undefined;
  const stage = document.createElement('div');
  root.replaceChildren(stage);
  try {
    render(<EarlyShelves fronts={fronts} chosen={parts[1] ?? chosenBefore(settings, studio)} />, stage);
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

function EarlyShelves({ fronts, chosen }: { fronts: Fronts; chosen: string }) {
  const drawer = route.value.query.get('drawer') ?? '';
  const ofDrawer = fronts.cabinets.find((each) => each.fronts.some(({ id }) => id === drawer))?.id;
  const [current, turn] = useState(ofDrawer ?? currentOf(fronts, chosen));
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
              />
            </div>
          </div>
        </Screen>
      </div>
    </div>
  );
}
