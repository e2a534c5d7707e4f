import { useEffect, useState } from 'preact/hooks';
import { useDeps } from '../studio.tsx';

/** Says that a newer version waits. It is taken when asked for, never over something half typed. */
export function UpdateNotice() {
  const { updates } = useDeps();
  const [isWaiting, setWaiting] = useState(() => updates.isWaiting());
  useEffect(() => updates.onWaiting(() => setWaiting(true)), [updates]);
  if (!isWaiting) return null;
  return (
    <p class="update-line" role="status">
      A newer Mouldkeep is ready. What you are typing is kept.
      <button type="button" class="button button-quiet" onClick={() => updates.take()}>
        Take it now
      </button>
    </p>
  );
}
