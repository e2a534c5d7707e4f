/** Shows a count on the installed app's icon, or clears it at 0. Does nothing where the platform has no badges or refuses them. */
export function setBadge(count: number): void {
  const { setAppBadge, clearAppBadge }: Partial<Navigator> = navigator;
  const done = count > 0 ? setAppBadge?.call(navigator, count) : clearAppBadge?.call(navigator);
  done?.catch(() => undefined);
}
