import { type ComponentChildren, createContext } from 'preact';
import { useContext, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { type Route, route } from './router.ts';

/** Where a screen is shown. */
interface PaneIs {
  /** Its own address, which on a desk need not be the window’s. */
  readonly here: Route;
  /** It is the list beside the screen of the address. */
  readonly isBeside: boolean;
  readonly isDesk: boolean;
}

const LIST = { role: 'region', 'aria-label': 'List' } as const;
const PaneContext = createContext<PaneIs | undefined>(undefined);

/** Where this screen is shown, and at which address. */
export function usePane(): PaneIs {
  return useContext(PaneContext) ?? { here: route.value, isBeside: false, isDesk: false };
}

/** One screen, drawn again only when its own address names another. A list stays as it is when it moves aside for what is opened from it. */
export function Pane({
  here,
  isBeside = false,
  isDesk,
  screenAt,
}: {
  here: Route;
  isBeside?: boolean;
  isDesk: boolean;
  screenAt: (parts: readonly string[]) => ComponentChildren;
}) {
  const screen = useMemo(() => screenAt(here.parts), [here.parts.join('/')]);
  const pane = useMemo(() => ({ here, isBeside, isDesk }), [here, isBeside, isDesk]);
  const element = useRef<HTMLDivElement>(null);
  const was = useRef(isBeside);
  const scrolled = was.current === isBeside ? 0 : isBeside ? window.scrollY : (element.current?.scrollTop ?? 0);
  useLayoutEffect(() => {
    if (was.current === isBeside) return;
    was.current = isBeside;
    if (isBeside) element.current?.scrollTo(0, scrolled);
    else window.scrollTo(0, scrolled);
  });
  return (
    <div ref={element} class={isBeside ? 'pane-list' : 'app-screen'} {...(isBeside ? LIST : {})}>
      <PaneContext.Provider value={pane}>{screen}</PaneContext.Provider>
    </div>
  );
}
