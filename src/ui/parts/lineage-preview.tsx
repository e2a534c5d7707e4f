import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { outlineOf } from '../../domain/lineage/family.ts';
import type { Picture } from '../../domain/lineage/layout.ts';
import { isProblem } from '../../domain/problem.ts';
import { drawLineage, nearKinOf } from '../../views/lineage-page.ts';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { useWidth } from '../use-size.ts';
import { LineageDrawing } from './lineage-drawing.tsx';
import { LineageOutline } from './lineage-outline.tsx';
import '../styles/lineage.css';

/** Never so small that the words on its cards cannot be read. */
const SMALLEST = 0.7;
/** A phone is one frame wide. */
const ACROSS = 1;
/** Kept free for it until it is drawn, px: two rows. */
const WAITING_H = 200;
/** Room for the line around the thing itself, px. */
const EDGE = 4;

/** The nearest kin of a thing as a small still picture; a tap on it opens the whole one. The same stands below it as a list. */
export function LineagePreview({ id }: { id: string }) {
  const shelf = useShelf();
  const members = useMemo(() => nearKinOf(shelf, id), [shelf, id]);
  const outline = useMemo(() => outlineOf(members), [members]);
  if (members.length === 0) return null;
  return (
    <>
      <Still id={id} members={members} />
      <details class="more">
        <summary>The same as a list</summary>
        <LineageOutline branches={outline} here={id} />
      </details>
    </>
  );
}

function Still({ id, members }: { id: string; members: ReturnType<typeof nearKinOf> }) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const isNear = useIsNear(ref);
  const [picture, setPicture] = useState<Picture | undefined>();
  const key = members.map((member) => `${member.id} ${member.parents.join(' ')}`).join();
  useLayoutEffect(() => {
    if (!isNear) return undefined;
    const drawing = drawLineage(members, ACROSS);
    // A picture that cannot be made leaves the list and the way to the whole one.
    void drawing.picture.then((drawn) => drawn && !isProblem(drawn) && setPicture(drawn));
    return drawing.cancel;
  }, [isNear, key]);
  const scale = picture && width > 0 ? Math.min(1, Math.max(SMALLEST, width / picture.width)) : 1;
  const here = picture?.cards.find((card) => card.id === id || card.piles.includes(id));
  // What does not fit is cut at the sides, with the thing itself in the middle.
  const left = picture ? shiftOf(picture.width * scale, width, here ? (here.x + here.w / 2) * scale : 0) : 0;
  return (
    <div
      ref={ref}
      class="lineage-still"
      aria-hidden="true"
      style={{ height: `${picture ? picture.height * scale + 2 * EDGE : WAITING_H}px` }}
    >
      <a href={to(['lineage', id])} tabIndex={-1}>
        {picture && (
          <span class="lineage-layer" style={{ width: `${picture.width}px`, transform: `translate(${left}px, ${EDGE}px) scale(${scale})` }}>
            <LineageDrawing picture={picture} cards={picture.cards} here={id} isStill />
          </span>
        )}
      </a>
    </div>
  );
}

function shiftOf(drawn: number, width: number, middle: number): number {
  if (drawn <= width) return (width - drawn) / 2;
  return Math.min(0, Math.max(width - drawn, width / 2 - middle));
}

/** Whether it came near the glass yet: the worker that draws it is not started for somebody who never scrolls there. */
function useIsNear(ref: { readonly current: HTMLElement | null }): boolean {
  const [isNear, setNear] = useState(false);
  const seen = useRef(false);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || seen.current) return undefined;
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        seen.current = true;
        observer.disconnect();
        setNear(true);
      },
      { rootMargin: '200px' },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return isNear;
}
