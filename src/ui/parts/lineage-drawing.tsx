import type { ComponentChildren } from 'preact';
import type { Card, Picture } from '../../domain/lineage/layout.ts';
import { thingOf } from '../../domain/shelf.ts';
import { memberWords } from '../../views/lineage-page.ts';
import { addressOf } from '../address.ts';
import { useShelf } from '../studio.tsx';
import { Shape } from './shape.tsx';

/** The lines, frames and cards of a lineage. A still one has no links in it, because all of it is one. */
export function LineageDrawing({ picture, cards, here, isStill = false }: DrawingProps) {
  return (
    <>
      <svg class="lineage-lines" width={picture.width} height={picture.height} aria-hidden="true" focusable="false">
        {picture.frames.map((frame) => (
          <rect key={`${frame.x} ${frame.y}`} x={frame.x} y={frame.y} width={frame.w} height={frame.h} rx={14} class="lineage-frame" />
        ))}
        <path class="lineage-line" d={picture.lines.map(curve).join('')} />
      </svg>
      {!isStill &&
        picture.bands.map(({ y, generation }) => (
          <span key={y} class="lineage-band" style={{ top: `${y}px` }}>
            generation {generation}
          </span>
        ))}
      {cards.map((card) => (
        <LineageCard key={card.id} card={card} here={here} isStill={isStill} />
      ))}
    </>
  );
}

interface DrawingProps {
  readonly picture: Picture;
  /** Those of its cards to draw. */
  readonly cards: readonly Card[];
  readonly here: string;
  readonly isStill?: boolean;
}

function curve({ x1, y1, x2, y2 }: Picture['lines'][number]): string {
  const half = (y2 - y1) / 2;
  return `M${x1} ${y1}C${x1} ${y1 + half} ${x2} ${y2 - half} ${x2} ${y2}`;
}

function LineageCard({ card, here, isStill }: { card: Card; here: string; isStill: boolean }) {
  const shelf = useShelf();
  const words = memberWords(shelf, card.id);
  const [state] = words.states;
  return (
    <div
      class={`lineage-card ${card.id === here ? 'lineage-here' : ''}`}
      style={{ left: `${card.x}px`, top: `${card.y}px`, width: `${card.w}px`, height: `${card.h}px` }}
    >
      <To id={card.id} isStill={isStill} look={`lineage-head ${words.isSpent ? 'lineage-spent' : ''}`}>
        <span class="lineage-title">{words.title}</span>
        <span class="lineage-detail">
          {state && <Shape name={state.name} size={16} />} {words.detail}
        </span>
      </To>
      {card.piles.map((id) => {
        const pile = memberWords(shelf, id);
        return (
          <To
            key={id}
            id={id}
            isStill={isStill}
            look={`lineage-pile ${id === here ? 'lineage-here' : ''} ${pile.isSpent ? 'lineage-spent' : ''}`}
          >
            {pile.detail}
          </To>
        );
      })}
    </div>
  );
}

function To({ id, look, isStill, children }: { id: string; look: string; isStill: boolean; children: ComponentChildren }) {
  const thing = thingOf(useShelf(), id);
  if (!thing || isStill) return <span class={look}>{children}</span>;
  return (
    <a href={addressOf(thing)} class={look} tabIndex={-1} draggable={false}>
      {children}
    </a>
  );
}
