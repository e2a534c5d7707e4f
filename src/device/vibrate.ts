/** A short buzz, where the phone can: the eye need not leave the label. */
export function vibrate(ms: number): void {
  // Before the first tap Chromium refuses, and complains.
  if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.(ms);
}
