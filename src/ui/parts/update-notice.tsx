import { useEffect, useState } from 'preact/hooks';
import { useDeps } from '../studio.tsx';

/** Says that there is a newer version. It is taken when asked for, never over something half typed that could not be kept. */
export function UpdateNotice() {
  const { updates, drafts } = useDeps();
  const [newer, setNewer] = useState(() => updates.newer());
  useEffect(() => updates.onNewer(() => setNewer(updates.newer())), [updates]);
  if (newer === 'none') return null;
  const isTaken = newer === 'taken';
  const says = isTaken
    ? 'A newer Mouldkeep has been taken in another tab. Finish here, then load again.'
    : drafts.isHeld()
      ? 'A newer Mouldkeep is ready. Finish here first: what is open in this tab is too long to be kept.'
      : 'A newer Mouldkeep is ready. What you are typing is kept.';
  return (
    <p class="update-line" role="status">
      {says}
      <button type="button" class="button button-quiet" onClick={() => updates.take()}>
        {isTaken ? 'Load again' : 'Take it now'}
      </button>
    </p>
  );
}
