/** What a key can step to in a list. */
const LINES = '.row-link, .attention-title, .picker-choice, .period-place';

const isSeen = (element: HTMLElement) => element.checkVisibility({ visibilityProperty: true }) && !element.closest('[inert]');

/** The lines of what is being looked at: a sheet lies over everything else, and of two panes it is the one that has the focus. */
function lines(): readonly HTMLElement[] {
  const active = document.activeElement;
  const within =
    document.querySelector('dialog[open]') ??
    active?.closest('.pane-list, .app-screen') ??
    document.querySelector('.pane-list') ??
    document;
  return [...within.querySelectorAll<HTMLElement>(LINES)].filter(isSeen);
}

/** The line a label stands for is its checkbox. */
const focusable = (line: HTMLElement): HTMLElement => line.querySelector('input') ?? line;

/** Goes a line on or back; from the search to the first, and from the first to the search. */
export function stepInList(by: 1 | -1): boolean {
  const all = lines();
  const active = document.activeElement;
  const at = all.findIndex((line) => line.contains(active));
  const isSearch = active?.closest('.search') !== null && active?.closest('.search') !== undefined;
  // Elsewhere on the page the arrows scroll, as everywhere.
  if (at < 0 && !isSearch && active !== document.body && !active?.closest('.list')) return false;
  if (at === 0 && by < 0) return focusSearch();
  const next = all[at < 0 ? 0 : at + by];
  if (!next) return at >= 0;
  focusable(next).focus();
  next.scrollIntoView({ block: 'nearest' });
  return true;
}

/** The box of *Where is…*, when it is on the screen. */
export function focusSearch(): boolean {
  const box = document.querySelector<HTMLInputElement>('#where-query');
  if (!box || !isSeen(box)) return false;
  box.focus();
  box.select();
  return true;
}

/** From the list to the heading of what is open beside it. */
export function focusPage(): boolean {
  const heading = document.querySelector<HTMLElement>('.app-screen h1');
  if (!heading || !document.activeElement?.closest('.pane-list')) return false;
  heading.tabIndex = -1;
  heading.focus();
  return true;
}

/** Back to the list, to the line of what is open. */
export function toList(): boolean {
  const list = document.querySelector('.pane-list');
  if (!list || document.activeElement?.closest('.pane-list')) return false;
  const line = list.querySelector<HTMLElement>('.row-link[aria-current]') ?? [...list.querySelectorAll<HTMLElement>(LINES)].find(isSeen);
  line?.focus();
  return line !== undefined;
}

/** Whether letters go into it, so that they cannot be keys of the app. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !['checkbox', 'radio', 'button', 'submit', 'file', 'range', 'color'].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable;
}

/** Begins choosing several things of a list with this line; false when the list has no choosing. */
export function pickFrom(line: Element | null | undefined): boolean {
  const list = line?.closest('ul');
  const start = list?.previousElementSibling;
  if (!line?.matches('.row-link') || !(start instanceof HTMLElement) || !start.matches('.pick-start')) return false;
  start.dataset['from'] = String([...(list?.querySelectorAll('.row-link') ?? [])].indexOf(line));
  start.click();
  return true;
}
