import { type ReadonlySignal, signal } from '@preact/signals';
import { type ComponentChildren, createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Deps } from '../actions/deps.ts';
import type { Shelf } from '../domain/shelf.ts';

interface Studio {
  readonly deps: Deps;
  readonly shelf: ReadonlySignal<Shelf>;
}

const StudioContext = createContext<Studio | null>(null);

/** Puts the studio's records within reach of every screen. The shelf shown is always one already written. */
export function studioOf(deps: Deps): Studio {
  const shelf = signal(deps.keeper.shelf());
  deps.keeper.subscribe((next) => {
    shelf.value = next;
  });
  return { deps, shelf };
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
