import { useEffect, useState } from 'preact/hooks';
import type { Code } from '../../domain/brand.ts';
import { type Burst, endsLabel, heard, labelIn, type Stroke } from '../../domain/wedge.ts';
import { findCode } from '../../views/find-code.ts';
import { addressOf } from '../address.ts';
import { isTyping, pickFrom } from '../key-focus.ts';
import { areKeysOn, KEYS, type KeyDesk, type KeyRule } from '../keys.ts';
import { offerLabel } from '../label-taker.ts';
import { go, route, to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { asItStands, type Before } from '../typed-field.ts';
import { KeysSheet } from './keys-sheet.tsx';

/** A letter waits this long to be sure that no scanner is typing; longer than the gaps within a burst (domain/wedge.ts). */
const WAIT_MS = 65;

/** Hears every key of the app: a scanner’s labels, and the keys of `KEYS`. Draws nothing but their list. */
export function Keyboard(_: object) {
  const deps = useDeps();
  const [isShown, setShown] = useState(false);
  useEffect(() => listen(() => ({ deps, shelf: deps.keeper.shelf(), showKeys: setShown })), []);
  return isShown ? <KeysSheet onClose={() => setShown(false)} /> : null;
}

function listen(desk: () => KeyDesk): () => void {
  let burst: Burst = [];
  let before: Before = asItStands();
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function onKey(event: KeyboardEvent): void {
    if (event.isComposing) return;
    const stroke: Stroke = { key: event.key, code: event.code, atMs: event.timeStamp, isRepeat: event.repeat };
    const [first] = burst;
    burst = heard(burst, stroke);
    if (burst[0] !== first) before = asItStands();
    else clearTimeout(waiting);
    const code = endsLabel(stroke) ? labelIn(burst) : undefined;
    if (code) {
      burst = [];
      take(event, code);
    } else if (event.key.length > 1 || burst.slice(0, -1).every(({ key }) => key.length > 1)) press(event);
  }

  function take(event: KeyboardEvent, code: Code): void {
    // These are for codes: they take it by themselves, or keep it.
    if (before.field?.closest('.code-keys')) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (before.field instanceof HTMLInputElement && before.field.name === 'code') return;
    before.putBack();
    desk().showKeys(false);
    if (offerLabel(code, before.field)) return;
    const [found, ...others] = findCode(desk().shelf, code);
    // What nothing or several things carry is asked about where labels are read.
    go(found && others.length === 0 ? addressOf(found.thing) : to(['c', code]));
  }

  function press(event: KeyboardEvent): void {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || !areKeysOn(desk().deps)) return;
    // The drawing board has keys of its own.
    if (route.value.parts[0] === 'draw') return;
    const rule = KEYS.find(({ key }) => key === event.key);
    if (!rule || !isFree(event, rule)) return;
    if (rule.key === 'Escape' && isTyping(event.target)) return (event.target as HTMLElement).blur();
    if (rule.key.length > 1 || rule.key === ' ') {
      if (rule.run(desk())) event.preventDefault();
      return;
    }
    // A browser may have a use of its own for it, such as finding on “/”.
    event.preventDefault();
    waiting = setTimeout(() => void rule.run(desk()), WAIT_MS);
  }

  function onClick(event: MouseEvent): void {
    if (!event.shiftKey || !(event.target instanceof Element) || !pickFrom(event.target.closest('.row-link'))) return;
    event.preventDefault();
    event.stopPropagation();
  }

  window.addEventListener('keydown', onKey, { capture: true });
  window.addEventListener('click', onClick, { capture: true });
  return () => {
    clearTimeout(waiting);
    window.removeEventListener('click', onClick, { capture: true });
    window.removeEventListener('keydown', onKey, { capture: true });
  };
}

/** Whether a key is the app’s: not a field’s, and not a sheet’s, which has its own Escape and only lists to step through. */
function isFree(event: KeyboardEvent, { key }: KeyRule): boolean {
  const isArrow = key === 'ArrowDown' || key === 'ArrowUp';
  const hasSheet = document.querySelector('dialog[open]') !== null;
  if (isTyping(event.target)) {
    const isSearch = event.target instanceof Element && event.target.closest('.search') !== null;
    return (key === 'Escape' && !hasSheet) || (key === 'ArrowDown' && isSearch);
  }
  // Such as the drawing board, which tells its keys itself.
  if (event.target instanceof Element && event.target.closest('[data-own-keys]') !== null && key !== '?') return false;
  // Arrows choose among radio buttons.
  if (event.target instanceof HTMLInputElement && event.target.type === 'radio') return false;
  return !hasSheet || isArrow;
}
