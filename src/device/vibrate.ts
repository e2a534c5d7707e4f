/** A short buzz, where the phone can: the eye need not leave the label. */
export function vibrate(ms: number): void {
  navigator.vibrate?.(ms);
}
