import { useMemo } from 'preact/hooks';
import type { Picture } from '../../domain/lineage/layout.ts';
import { touches } from '../pan-zoom.ts';
import { usePanZoom } from '../use-pan-zoom.ts';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import { LineageDrawing } from './lineage-drawing.tsx';

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
          <LineageDrawing picture={picture} cards={cards} here={here} />
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
