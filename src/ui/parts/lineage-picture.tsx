import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Card, Picture } from '../../domain/lineage/layout.ts';
import { thingOf } from '../../domain/shelf.ts';
import { memberWords } from '../../views/lineage-page.ts';
import { addressOf } from '../address.ts';
import { touches } from '../pan-zoom.ts';
import { useShelf } from '../studio.tsx';
import { usePanZoom } from '../use-pan-zoom.ts';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import { Shape } from './shape.tsx';

/** A lineage as cards in rows. Its links are not in the order of tabs: the list beside it holds the same ones, and says it to screen readers. */
export function LineagePicture({ picture, here }: { picture: Picture; here: string }) {
  const content = useMemo(() => ({ width: picture.width, height: picture.height }), [picture]);
  const begin = useMemo(() => {
    const card = picture.cards.find(({ id, piles }) => id === here || piles.includes(here));
    return card && { x: card.x, y: card.y, width: card.w, height: card.h };
  }, [picture, here]);
  const { pane, layer, tools, drawn, closer, farther, whole, here: toHere } = usePanZoom(content, begin);
  const cards = picture.cards.filter((card) => touches({ x: card.x, y: card.y, width: card.w, height: card.h }, drawn));
  return (
    <div class="lineage">
      <div ref={pane} class="lineage-pane" aria-hidden="true">
        <div ref={layer} class="lineage-layer">
          <svg class="lineage-lines" width={picture.width} height={picture.height} aria-hidden="true" focusable="false">
            {picture.frames.map((frame) => (
              <rect key={`${frame.x} ${frame.y}`} x={frame.x} y={frame.y} width={frame.w} height={frame.h} rx={14} class="lineage-frame" />
            ))}
            <path class="lineage-line" d={picture.lines.map(curve).join('')} />
          </svg>
          {picture.bands.map(({ y, generation }) => (
            <span key={y} class="lineage-band" style={{ top: `${y}px` }}>
              generation {generation}
            </span>
          ))}
          {cards.map((card) => (
            <LineageCard key={card.id} card={card} here={here} />
          ))}
        </div>
      </div>
      <div ref={tools} class="lineage-tools" role="toolbar" aria-label="The picture: arrow keys move it, plus and minus zoom">
        <Button aria-label="Farther" onClick={farther}>
          <Icon name="minus" />
        </Button>
        <Button aria-label="Closer" onClick={closer}>
          <Icon name="plus" />
        </Button>
        <Button onClick={whole}>All of it</Button>
        <Button onClick={toHere}>This one</Button>
      </div>
    </div>
  );
}

function curve({ x1, y1, x2, y2 }: Picture['lines'][number]): string {
  const half = (y2 - y1) / 2;
  return `M${x1} ${y1}C${x1} ${y1 + half} ${x2} ${y2 - half} ${x2} ${y2}`;
}

function LineageCard({ card, here }: { card: Card; here: string }) {
  const shelf = useShelf();
  const words = memberWords(shelf, card.id);
  const [state] = words.states;
  return (
    <div
      class={`lineage-card ${card.id === here ? 'lineage-here' : ''}`}
      style={{ left: `${card.x}px`, top: `${card.y}px`, width: `${card.w}px`, height: `${card.h}px` }}
    >
      <To id={card.id} look={`lineage-head ${words.isSpent ? 'lineage-spent' : ''}`}>
        <span class="lineage-title">{words.title}</span>
        <span class="lineage-detail">
          {state && <Shape name={state.name} size={16} />} {words.detail}
        </span>
      </To>
      {card.piles.map((id) => {
        const pile = memberWords(shelf, id);
        return (
          <To key={id} id={id} look={`lineage-pile ${id === here ? 'lineage-here' : ''} ${pile.isSpent ? 'lineage-spent' : ''}`}>
            {pile.detail}
          </To>
        );
      })}
    </div>
  );
}

function To({ id, look, children }: { id: string; look: string; children: ComponentChildren }) {
  const thing = thingOf(useShelf(), id);
  if (!thing) return <span class={look}>{children}</span>;
  return (
    <a href={addressOf(thing)} class={look} tabIndex={-1} draggable={false}>
      {children}
    </a>
  );
}
