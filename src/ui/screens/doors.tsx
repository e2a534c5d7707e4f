import { useLayoutEffect } from 'preact/hooks';
import { leaveDoors, onEnter, showDoors } from '../doors.ts';
import { go } from '../router.ts';
import { useDeps } from '../studio.tsx';

/** First opening: the doors, which stand in the page itself, are left as they are until one is gone through. */
export function DoorsScreen({ onEntered }: { onEntered: () => void }) {
  const { settings } = useDeps();
  useLayoutEffect(() => {
    showDoors();
    onEnter((address) => {
      settings.set('entered', true);
      onEntered();
      go(address);
    });
    return leaveDoors;
  }, []);
  return null;
}
