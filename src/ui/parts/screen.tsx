import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { back } from '../router.ts';
import { Icon } from './icon.tsx';

interface ScreenProps {
  title: string;
  /** Shown instead of the title in the header, when it needs more than words. */
  heading?: ComponentChildren;
  /** Whether a back button stands before the title; the five main screens have none. */
  hasBack?: boolean;
  /** Small buttons at the header's end. */
  tools?: ComponentChildren;
  /** Main actions, always within reach of the thumb. */
  actions?: ComponentChildren;
  children: ComponentChildren;
}

/** Header, contents, and main actions at the bottom. */
export function Screen({ title, heading, hasBack = true, tools, actions, children }: ScreenProps) {
  useEffect(() => {
    document.title = `${title} – Mouldkeep`;
  }, [title]);
  return (
    <div class="screen">
      <header class="screen-head">
        {hasBack && (
          <button type="button" class="icon-button" aria-label="Back" onClick={back}>
            <Icon name="back" />
          </button>
        )}
        <h1>{heading ?? title}</h1>
        {tools && <div class="screen-tools">{tools}</div>}
      </header>
      <main class="screen-body">{children}</main>
      {actions && <ScreenActions>{actions}</ScreenActions>}
    </div>
  );
}

/** Tells the page how high it is, so that a message stands above the buttons and not over them. */
function ScreenActions({ children }: { children: ComponentChildren }) {
  const bar = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const page = document.documentElement.style;
    const watch = new ResizeObserver(() => page.setProperty('--actions-height', `${bar.current?.offsetHeight ?? 0}px`));
    if (bar.current) watch.observe(bar.current);
    return () => {
      watch.disconnect();
      page.removeProperty('--actions-height');
    };
  }, []);
  return (
    <section ref={bar} class="screen-actions" aria-label="What to do">
      {children}
    </section>
  );
}
