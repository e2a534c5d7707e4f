import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ProblemNote } from './note.tsx';

/** Its code can be fetched before it is shown, so that the tap that opens it need not wait. */
type Fetched<P> = ComponentType<P> & { readonly fetch: () => Promise<void> };

/** A screen whose code comes with the second load. */
export function lazy<P extends object>(
  fetchScreen: () => Promise<ComponentType<P>>,
  meanwhile: ComponentChildren = <p class="wait">Opening…</p>,
): Fetched<P> {
  let loaded: ComponentType<P> | undefined;
  function Lazy(props: P) {
    const [Part, setPart] = useState<ComponentType<P> | undefined>(() => loaded);
    const [isBroken, setBroken] = useState(false);
    useEffect(() => {
      if (Part) return;
      fetchScreen().then(
        (part) => {
          loaded = part;
          setPart(() => part);
        },
        () => setBroken(true),
      );
    }, [Part]);
    if (isBroken) {
      return (
        <ProblemNote
          problem={{
            problem: true,
            says: 'This screen could not be loaded.',
            kept: 'Nothing was lost. Load the page again, once while online.',
          }}
        />
      );
    }
    return Part ? <Part {...props} /> : meanwhile;
  }
  Lazy.fetch = () =>
    fetchScreen().then(
      (part) => {
        loaded = part;
      },
      () => undefined, // Said when it is opened.
    );
  return Lazy;
}
