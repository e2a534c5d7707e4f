import { type ComponentChild, render } from 'preact';
import type { Deps } from '../actions/deps.ts';
import type { CopyPlace } from '../actions/save-second-copy.ts';
import type { Problem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { App } from './app.tsx';
import { leaveDoors } from './doors.ts';
import { earlyFronts, readyFronts } from './early-fronts.tsx';
import { go } from './router.ts';
import { BrokenScreen } from './screens/broken.tsx';
import { StudioProvider, studioOf } from './studio.tsx';

/** Where the app is drawn: one thing after another, until the app itself is. */
export interface Stage {
  /** What the first screen showed last, if it can still be shown. */
  early(fronts: unknown, settings: Deps['settings'], studio: string): void;
  wait(says: string): void;
  broken(problem: Problem): void;
  /** Reckons what `app` is going to show, so that drawing it is a shorter task. */
  ready(shelf: Shelf): void;
  app(deps: Deps): void;
  go(address: `#/${string}`): void;
}

export function stageIn(root: HTMLElement, copy: CopyPlace): Stage {
  let clearEarly: (() => void) | undefined;
  const draw = (screen: ComponentChild) => {
    clearEarly?.();
    clearEarly = undefined;
    render(screen, root);
    if (root.firstChild) leaveDoors();
  };
  return {
    early(fronts, settings, studio) {
      clearEarly = earlyFronts(root, fronts, settings, studio);
    },
    wait: (says) => draw(<p class="wait">{says}</p>),
    go,
    broken: (problem) => draw(<BrokenScreen problem={problem} copy={copy} />),
    ready: (shelf) => {
      if (!clearEarly) readyFronts(shelf);
    },
    app(deps) {
      const isAtOnce = clearEarly !== undefined;
      draw(
        <StudioProvider studio={studioOf(deps)}>
          <App isAtOnce={isAtOnce} />
        </StudioProvider>,
      );
    },
  };
}
