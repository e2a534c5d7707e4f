import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { afterPaint } from './turns.ts';

/**
 * Width of an element in px, followed as it changes; what is expected until it stands. Where nothing is, the page without what needs it gets
 * onto the glass first, unless it is to be measured at once.
 */
export function useWidth<E extends HTMLElement>({ expected = 0, isAtOnce = false } = {}) {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(expected);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    let isOver = false;
    const follow = () => {
      if (isOver) return;
      setWidth(element.clientWidth);
      observer.observe(element);
    };
    if (isAtOnce || expected > 0) follow();
    else afterPaint(follow);
    return () => {
      isOver = true;
      observer.disconnect();
    };
  }, []);
  return { ref, width };
}

/**
 * Tells the page's styles how high an element is, in px, where somebody needs it: what is fixed or sticks beside it keeps clear of it. The
 * whole page is styled anew for it.
 */
export function useToldHeight<E extends HTMLElement>(name: `--${string}`, isNeeded = true) {
  const ref = useRef<E>(null);
  useLayoutEffect(() => {
    if (!isNeeded) return undefined;
    const page = document.documentElement.style;
    const watch = new ResizeObserver(() => page.setProperty(name, `${ref.current?.offsetHeight ?? 0}px`));
    if (ref.current) watch.observe(ref.current);
    return () => {
      watch.disconnect();
      page.removeProperty(name);
    };
  }, [name, isNeeded]);
  return ref;
}

/** Whether contents open beside the cabinet (on a desk) or slide over it (on a phone). */
export function useIsDesk(): boolean {
  const [isDesk, setDesk] = useState(() => window.matchMedia(DESK).matches);
  useLayoutEffect(() => {
    const query = window.matchMedia(DESK);
    const follow = () => setDesk(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return isDesk;
}

const DESK = '(min-width: 1000px)';
