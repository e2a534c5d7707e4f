import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Width of an element in px, followed as it changes; 0 until it stands. */
export function useWidth<E extends HTMLElement>() {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    setWidth(element.clientWidth);
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}

/** Tells the page's styles how high an element is, in px: what is fixed or sticks beside it keeps clear of it. */
export function useToldHeight<E extends HTMLElement>(name: `--${string}`) {
  const ref = useRef<E>(null);
  useLayoutEffect(() => {
    const page = document.documentElement.style;
    const watch = new ResizeObserver(() => page.setProperty(name, `${ref.current?.offsetHeight ?? 0}px`));
    if (ref.current) watch.observe(ref.current);
    return () => {
      watch.disconnect();
      page.removeProperty(name);
    };
  }, []);
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
