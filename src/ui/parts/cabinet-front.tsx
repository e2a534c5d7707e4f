import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Front } from '../../views/front.ts';
import type { CabinetFront } from '../../views/fronts.ts';
import { scaleOf } from '../front-scale.ts';
import { Button } from './button.tsx';
import { DrawerFront } from './drawer-front.tsx';

interface CabinetFrontProps {
  cabinet: CabinetFront;
  /** Room there is for it, px. */
  width: number;
  height: number;
  picked: string;
  onPick: (id: string) => void;
}

/** A cabinet's front to scale. Where its drawers are too small for a thumb, a tap brings that part nearer first. */
export function CabinetFrontPart({ cabinet, width, height, picked, onPick }: CabinetFrontProps) {
  const { scale, zoomed } = scaleOf(cabinet, width, height);
  const [near, setNear] = useState<string | null>(null);
  const isNear = near !== null && zoomed !== null;
  const used = isNear ? zoomed : scale;
  const pane = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const target = cabinet.fronts.find((front) => front.id === near);
    if (!isNear || !target || !pane.current) return;
    const { x, y, w, h } = target.rect;
    pane.current.scrollTo({
      left: (x + w / 2) * used - pane.current.clientWidth / 2,
      top: (y + h / 2) * used - pane.current.clientHeight / 2,
    });
  }, [isNear, near, used, cabinet]);
  // What is looked for has to be in sight, also on a cabinet taller than the screen.
  useEffect(() => {
    if (picked !== '')
      pane.current?.querySelector(`[data-place="${CSS.escape(picked)}"]`)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [picked]);
  const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
  const [w, h] = [cabinet.widthMm * used, cabinet.heightMm * used];
  const tap = useRef(onPick);
  tap.current = (id) => (zoomed !== null && !isNear ? setNear(id) : onPick(id));
  const drawn = (front: Front, isPicked: boolean) => (
    <DrawerFront
      key={front.id}
      front={front}
      scale={used}
      isNear={isNear}
      letters={letters}
      isPicked={isPicked}
      onPick={(id) => tap.current(id)}
    />
  );
  // The very same as before but for the one that is picked: a tap is answered by drawing two of them, not all.
  const plain = useMemo(() => cabinet.fronts.map((front) => drawn(front, false)), [cabinet, used, isNear, letters]);
  return (
    <div class="cabinet">
      {zoomed !== null && (
        <div class="cabinet-near">
          {isNear ? <Button onClick={() => setNear(null)}>Whole front</Button> : <p>Tap the front to come nearer.</p>}
        </div>
      )}
      <div class="carcass" style={{ width: `${isNear ? width : w}px` }}>
        <div class="carcass-top" />
        <div
          ref={pane}
          class={isNear ? 'carcass-pane carcass-near' : 'carcass-pane'}
          style={isNear ? { maxHeight: `${Math.max(320, height)}px` } : {}}
        >
          <div class="carcass-front" style={{ width: `${w}px`, height: `${h}px` }}>
            {cabinet.fronts.map((front, at) => (front.id === picked ? drawn(front, true) : plain[at]))}
          </div>
        </div>
        <div class="carcass-foot" />
      </div>
    </div>
  );
}
