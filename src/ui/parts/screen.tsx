import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { usePane } from '../pane.tsx';
import { back } from '../router.ts';
import { useToldHeight } from '../use-size.ts';
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

/** The banner is that of the screen itself. */
const NO_BANNER = { role: 'presentation' } as const;

/** Header, contents, and main actions at the bottom. */
export function Screen({ title, heading, hasBack = true, tools, actions, children }: ScreenProps) {
  const { here, isBeside } = usePane();
  useEffect(() => {
    if (!isBeside) document.title = `${title} – Mouldkeep`;
  }, [title, isBeside]);
  return (
    <div class="screen">
      <header class="screen-head" {...(isBeside ? NO_BANNER : {})}>
        {hasBack && !isBeside && (
          <button type="button" class="icon-button" aria-label="Back" onClick={back}>
            <Icon name="back" />
          </button>
        )}
        {isBeside ? (
          <h2>
            <a href={here.address}>{title}</a>
          </h2>
        ) : (
          <h1>{heading ?? title}</h1>
        )}
        {tools && !isBeside && <div class="screen-tools">{tools}</div>}
      </header>
      {/* One element wherever it stands: a list that moves aside, or a tablet that is turned, keeps what is in it. */}
      <div class="screen-body" role={isBeside ? undefined : 'main'}>
        {children}
      </div>
      {actions && !isBeside && <ScreenActions>{actions}</ScreenActions>}
    </div>
  );
}

/** A message stands above the buttons and not over them. */
function ScreenActions({ children }: { children: ComponentChildren }) {
  const bar = useToldHeight<HTMLElement>('--actions-height');
  return (
    <section ref={bar} class="screen-actions" aria-label="What to do">
      {children}
    </section>
  );
}
