/**
 * The doors of the first opening. They stand in the page itself (index.html), so that they are on the glass, and can be tapped, before any of
 * the app has come. This and `src/opening.ts` are all the code they need.
 */
const doors = document.getElementById('doors');
const ways = document.getElementById('ways');

/** The address behind a door that was tapped before the app was there to go through it. */
let chosen: string | undefined;
let enter: ((address: string) => void) | undefined;

ways?.addEventListener('click', ({ target }) => {
  const address = (target as Element).closest<HTMLElement>('[data-to]')?.dataset['to'];
  if (address === undefined) return;
  if (enter) return enter(address);
  chosen = address;
  sayInstead('Opening…');
});

function sayInstead(text: string): void {
  const says = document.createElement('p');
  says.className = 'wait';
  says.setAttribute('role', 'status');
  says.textContent = text;
  ways?.replaceWith(says);
}

/** Whether the first part of an address leads to a screen that is no doors' business: they lead there themselves. */
export function arePassed(name: string | undefined): boolean {
  return name === 'bring-in' || name === 'backup';
}

/** Shows them unless something else has been drawn already: a slow browser says only then that it keeps nothing yet. */
export function showFirst(): void {
  if (doors?.isConnected) showDoors();
}

export function showDoors(): void {
  if (doors && !doors.isConnected) document.body.prepend(doors);
  if (ways) ways.hidden = false;
}

/** Told the address of the door that is tapped, or was already. */
export function onEnter(entering: (address: string) => void): void {
  enter = entering;
  if (chosen !== undefined) entering(chosen);
}

/** Takes the doors away, once something else is drawn. */
export function leaveDoors(): void {
  doors?.remove();
}

/** The app itself could not be fetched. */
export function sayBroken(): void {
  sayInstead('Mouldkeep could not be loaded. Nothing was lost. Load this page again, once while online.');
}
