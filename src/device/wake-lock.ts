/**
 * Keeps the screen lit until the function given back is called. The lock is lost whenever the page is hidden, and taken again when it is seen.
 * Does nothing where there are no wake locks, or the phone refuses one to save its battery.
 */
export function stayAwake(wakeLock: WakeLock | undefined = navigator.wakeLock): () => void {
  if (!wakeLock) return () => undefined;
  let isOver = false;
  let lock: WakeLockSentinel | undefined;
  const take = async () => {
    if (isOver || document.visibilityState !== 'visible' || (lock && !lock.released)) return;
    try {
      const taken = await wakeLock.request('screen');
      if (isOver) void taken.release();
      else lock = taken;
    } catch {
      // The screen then goes dark as it always does.
    }
  };
  const again = () => void take();
  document.addEventListener('visibilitychange', again);
  again();
  return () => {
    isOver = true;
    document.removeEventListener('visibilitychange', again);
    void lock?.release().catch(() => undefined);
  };
}
