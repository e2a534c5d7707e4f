import { Fragment } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { markInWords } from '../../views/front-words.ts';
import type { CabinetFront, Fronts } from '../../views/fronts.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { useLate } from '../use-late.ts';
import { useWidth } from '../use-size.ts';
import { CabinetFrontPart } from './cabinet-front.tsx';
import { Shape } from './shape.tsx';

interface CabinetPagerProps {
  fronts: Fronts;
  current: string;
  /** Id of the tab of what stands in no cabinet. */
  elsewhere: string;
  picked: string;
  onPick: (id: string) => void;
  onTurn: (id: string) => void;
  /** Cabinets are drawn together with what stands around them. */
  isAtOnce?: boolean;
  /** How wide it stood last time, px. */
  lastWidth?: number;
}

/** Share of the window's height that a cabinet may take before it is drawn smaller. */
const HEIGHT_SHARE = 0.66;

/** How wide the last one stood, px: the next is most likely as wide, and need not be drawn without its cabinets first. */
let stood = 0;
export const pagerWidth = (): number => stood;

/** Cabinets side by side: swiped, or chosen by name. */
export function CabinetPager({
  fronts,
  current,
  elsewhere,
  picked,
  onPick,
  onTurn,
  isAtOnce = false,
  lastWidth = stood,
}: CabinetPagerProps) {
  const { ref, width } = useWidth<HTMLDivElement>({ expected: lastWidth, isAtOnce });
  if (width > 0) stood = width;
  const settling = useRef<ReturnType<typeof setTimeout>>(undefined);
  const ids = fronts.cabinets.map(({ id }): string => id);
  const at = ids.indexOf(current);
  const height = Math.max(340, window.innerHeight * HEIGHT_SHARE);
  const isFirst = useRef(true);
  /** Where the pane is being scrolled to; what it passes on the way is not a choice. A finger on it is. */
  const heading = useRef<number | null>(null);
  const byHand = () => {
    heading.current = null;
  };
  useLayoutEffect(() => {
    const pane = ref.current;
    if (!pane || at < 0 || width === 0) return;
    const left = at * pane.clientWidth;
    if (Math.abs(pane.scrollLeft - left) > NEAR) {
      heading.current = isFirst.current ? null : left;
      pane.scrollTo({ left, behavior: isFirst.current ? 'instant' : 'smooth' });
    }
    isFirst.current = false;
  }, [at, width, ref]);
  useEffect(() => () => clearTimeout(settling.current), []);
  const [paneHeight, setPaneHeight] = useState<number>();
  // As high as the cabinet looked at: the tallest of them would leave a gap below the others.
  useLayoutEffect(() => {
    const page = ref.current?.children[at];
    if (!page || width === 0) return undefined;
    const measure = () => setPaneHeight(page.getBoundingClientRect().height);
    // At once too: the observer's word comes a frame late, in which all below would stand lower.
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(page);
    return () => observer.disconnect();
  }, [at, width, ref]);
  function settled(): void {
    clearTimeout(settling.current);
    settling.current = setTimeout(() => {
      const pane = ref.current;
      if (!pane) return;
      if (heading.current !== null) {
        if (Math.abs(pane.scrollLeft - heading.current) > NEAR) return settled();
        heading.current = null;
      }
      const id = ids[Math.round(pane.scrollLeft / pane.clientWidth)];
      if (id && id !== current && current !== elsewhere) onTurn(id);
    }, SETTLE_MS);
  }
  return (
    <div class="pager">
      <CabinetTabs fronts={fronts} current={current} elsewhere={elsewhere} onTurn={onTurn} />
      <div
        ref={ref}
        class={at < 0 ? 'pager-pane pager-away' : 'pager-pane'}
        style={paneHeight ? { height: `${paneHeight}px` } : {}}
        onScroll={settled}
        onTouchStart={byHand}
        onWheel={byHand}
        onPointerDown={byHand}
      >
        {fronts.cabinets.map((cabinet, index) => (
          <section key={cabinet.id} class="pager-page" aria-label={cabinet.name} aria-hidden={index !== at} inert={index !== at}>
            {width > 0 &&
              (Math.abs(index - at) <= 1 ? (
                <PagerCabinet cabinet={cabinet} isCurrent={index === at} width={width} height={height} picked={picked} onPick={onPick} />
              ) : (
                <CabinetRoom cabinet={cabinet} width={width} height={height} />
              ))}
          </section>
        ))}
      </div>
    </div>
  );
}

interface PagerCabinetProps {
  cabinet: CabinetFront;
  isCurrent: boolean;
  width: number;
  height: number;
  picked: string;
  onPick: (id: string) => void;
}

/** Those beside the one looked at are drawn a frame after it, and each only when something of it is another. */
function PagerCabinet({ cabinet, isCurrent, width, height, picked, onPick }: PagerCabinetProps) {
  const late = useLate(cabinet);
  const shown = isCurrent ? cabinet : late;
  const pickedHere = picked !== '' && cabinet.fronts.some(({ id }) => id === picked) ? picked : '';
  const pick = useRef(onPick);
  pick.current = onPick;
  return useMemo(
    () =>
      shown ? (
        <CabinetFrontPart cabinet={shown} width={width - 2 * SIDE} height={height} picked={pickedHere} onPick={(id) => pick.current(id)} />
      ) : (
        <CabinetRoom cabinet={cabinet} width={width} height={height} />
      ),
    [shown, width, height, pickedHere, shown ? undefined : cabinet],
  );
}

/** As much room as one takes that is not drawn; told without its fronts, which need not have been read. */
function CabinetRoom({ cabinet, width, height }: { cabinet: CabinetFront; width: number; height: number }) {
  return <div style={{ height: `${Math.min(height, (cabinet.heightMm * width) / cabinet.widthMm)}px` }} />;
}

const SETTLE_MS = 90;
/** Scroll positions closer than this are the same, px. */
const NEAR = 3;
/** Side of a cabinet's carcass, and the space beside it, px. */
const SIDE = 16;

function CabinetTabs({ fronts, current, elsewhere, onTurn }: Pick<CabinetPagerProps, 'fronts' | 'current' | 'elsewhere' | 'onTurn'>) {
  const row = useRef<HTMLElement>(null);
  useEffect(() => {
    const tab = row.current?.querySelector<HTMLElement>('[aria-current]');
    if (row.current && tab) row.current.scrollTo({ left: tab.offsetLeft - (row.current.clientWidth - tab.offsetWidth) / 2 });
  }, [current]);
  const beyond = fronts.elsewhere.length + fronts.nowhere;
  return (
    <nav ref={row} class="tabs" aria-label="Cabinets">
      {fronts.cabinets.map(({ id, name, room, marks }, at) => (
        <Fragment key={id}>
          {room !== undefined && room !== fronts.cabinets[at - 1]?.room && (
            <a class="tab tab-room" href="#/rooms">
              {room}
            </a>
          )}
          <button type="button" class="tab" aria-current={id === current ? 'true' : undefined} onClick={() => onTurn(id)}>
            {name}
            {marks[0] && marks[0].level !== 'note' && (
              <span class={`tab-mark mark-${LEVEL_TONE[marks[0].level]}`}>
                <Shape name={FLAG_SHAPE[marks[0].kind]} size={16} />
                <span class="unseen">, {markInWords(marks[0])}</span>
              </span>
            )}
          </button>
        </Fragment>
      ))}
      {beyond > 0 && (
        <button type="button" class="tab" aria-current={current === elsewhere ? 'true' : undefined} onClick={() => onTurn(elsewhere)}>
          Elsewhere
        </button>
      )}
    </nav>
  );
}
