import type { DatedPicture } from '../../views/pictures-in-time.ts';
import type { ZoomHands } from '../use-zoom.ts';
import { Icon } from './icon.tsx';
import { Picture } from './picture.tsx';

interface PaneProps {
  side: 'Left' | 'Right';
  pictures: readonly DatedPicture[];
  at: number;
  onTurn: (at: number) => void;
  hands: ZoomHands;
}

/** One of two pictures side by side, with the day it is of, and a way to the one before and after. */
export function PicturePane({ side, pictures, at, onTurn, hands }: PaneProps) {
  const shown = pictures[at];
  if (!shown) return null;
  const turn = (step: number) => onTurn(Math.min(pictures.length - 1, Math.max(0, at + step)));
  const { scale, x, y } = hands.zoom;
  return (
    <figure class="pane">
      <div class={scale > 1 ? 'pane-glass pane-zoomed' : 'pane-glass'} {...hands.on(turn)}>
        <div class="pane-picture" style={{ transform: `translate(${x * 100}%, ${y * 100}%) scale(${scale})` }}>
          <Picture sha={shown.sha} size="whole" alt={`${shown.day}: ${shown.says}`} />
        </div>
      </div>
      <figcaption>
        <time dateTime={shown.on}>{shown.day}</time>
        <span class="row-detail">{shown.says}</span>
      </figcaption>
      <div class="pane-turns">
        <button type="button" class="icon-button" aria-label={`${side}: the picture before`} disabled={at === 0} onClick={() => turn(-1)}>
          <Icon name="back" />
        </button>
        <span>
          {at + 1} of {pictures.length}
        </span>
        <button
          type="button"
          class="icon-button pane-next"
          aria-label={`${side}: the next picture`}
          disabled={at === pictures.length - 1}
          onClick={() => turn(1)}
        >
          <Icon name="back" />
        </button>
      </div>
    </figure>
  );
}
