import { type ComponentChildren, Fragment, options, type VNode } from 'preact';
import { NOUNS } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';

/** How this device spells: “mould, colour” or “mold, color”. */
export const SPELLINGS = ['mould', 'mold'] as const;
export type Spelling = (typeof SPELLINGS)[number];

/** The product's own name stays as it is. */
const OURS = /mould(?!keep)|\bcolour/gi;
const IS_OURS = /mould(?!keep)|\bcolour/i;
/** Attributes that are read or shown; never a field's value. */
const SHOWN = ['aria-label', 'placeholder', 'title', 'alt'] as const;

const known = new WeakMap<Shelf['things'], readonly string[]>();

/** What the studio itself wrote that has one of the words in it, longest first: it is shown as it was written. */
function ownTexts(shelf: Shelf): readonly string[] {
  const before = known.get(shelf.things);
  if (before) return before;
  const texts = new Set<string>();
  const take = (value: unknown): void => {
    if (typeof value === 'string') {
      // A name that is nothing but the word would take ours with it wherever it stands.
      if (IS_OURS.test(value) && !/^(?:moulds?|colours?)$/i.test(value)) texts.add(value);
    } else if (Array.isArray(value)) value.forEach(take);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(take);
  };
  take(shelf.studio.name);
  for (const noun of NOUNS)
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values())
      for (const [key, value] of Object.entries(thing)) if (key !== 'noun' && key !== 'for') take(value);
  const list = [...texts].sort((a, b) => b.length - a.length);
  known.set(shelf.things, list);
  return list;
}

/** A sentence of ours in the other spelling; whatever the studio wrote stands in it untouched. */
export function respelt(text: string, own: readonly string[]): string {
  if (!IS_OURS.test(text)) return text;
  for (const each of own) {
    const at = text.indexOf(each);
    if (at >= 0) return respelt(text.slice(0, at), own) + each + respelt(text.slice(at + each.length), own);
  }
  return text.replace(OURS, (word) => word.replace(/ou/i, (ou) => ou.charAt(0)));
}

let isAmerican = false;
let isListening = false;

/** A text of ours as this device spells, for what leaves the screen: a table's headings, a file's name. */
export const spelt = (text: string, shelf: Shelf): string => (isAmerican ? respelt(text, ownTexts(shelf)) : text);

/**
 * Shows “mold” and “color” on every screen drawn from now on, or “mould” and “colour” again. Done where texts enter the page, so that no sentence has to know of it; an
 * element with `translate={false}` holds what somebody wrote.
 */
export function spell(spelling: Spelling, shelf: () => Shelf): void {
  isAmerican = spelling === 'mold';
  if (isListening) return;
  isListening = true;
  const before = options.vnode;
  const say = (text: string) => (IS_OURS.test(text) ? spelt(text, shelf()) : text);
  const inChildren = (children: ComponentChildren): ComponentChildren => {
    if (typeof children === 'string') return say(children);
    return Array.isArray(children)
      ? children.map((child) => (typeof child === 'string' || Array.isArray(child) ? inChildren(child) : child))
      : children;
  };
  options.vnode = (vnode: VNode) => {
    const props = vnode.props as Record<string, unknown> & { children?: ComponentChildren };
    if (isAmerican && (typeof vnode.type === 'string' || vnode.type === Fragment) && props['translate'] !== false) {
      if (props.children !== undefined) props.children = inChildren(props.children);
      for (const name of SHOWN) if (typeof props[name] === 'string') props[name] = say(props[name]);
    }
    before?.(vnode);
  };
  const title = document.querySelector('title');
  if (title)
    new MutationObserver(() => {
      const said = say(document.title);
      if (said !== document.title) document.title = said;
    }).observe(title, { childList: true });
}
