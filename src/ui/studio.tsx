import { type ReadonlySignal, signal } from '@preact/signals';
import { type ComponentChildren, createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Deps } from '../actions/deps.ts';
import type { Shelf } from '../domain/shelf.ts';

interface Studio {
  readonly deps: Deps;
  readonly shelf: ReadonlySignal<Shelf>;
  readonly holdShelf: () => () => void;
}

const StudioContext = createContext<Studio | null>(null);

/** Puts the studio's records within reach of every screen. The shelf shown is always one already written. */
export function studioOf(deps: Deps): Studio {
  const shelf = signal(deps.keeper.shelf());
  let holds = 0;
  deps.keeper.subscribe((next) => {
    if (holds === 0) shelf.value = next;
  });
  function holdShelf(): () => void {
    let isOver = false;
    holds++;
    return () => {
      if (isOver) return;
      isOver = true;
      holds--;
      if (holds === 0) shelf.value = deps.keeper.shelf();
    };
  }
  return { deps, shelf, holdShelf };
}

export function StudioProvider({ studio, children }: { studio: Studio; children: ComponentChildren }) {
  return <StudioContext.Provider value={studio}>{children}</StudioContext.Provider>;
}

function useStudio(): Studio {
  const studio = useContext(StudioContext);
  if (!studio) throw new Error('a screen was drawn without its studio');
  return studio;
}

export const useDeps = (): Deps => useStudio().deps;
/** The shelf as it is; the screen is drawn again when it changes. */
export const useShelf = (): Shelf => useStudio().shelf.value;
/**
 * For a form that is left once it is saved: until what this gives is called, screens are not drawn again for a changed shelf, so that the
 * outcome is on the glass first. To be called in any case, and soon.
 */
export const useHoldShelf = (): (() => () => void) => useStudio().holdShelf;
