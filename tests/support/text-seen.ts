import type { Page } from 'playwright-core';

/**
 * What cannot be read without scrolling sideways, a line each: a page wider than its window, words that stick out of it, out of their button
 * in the bar, or out of a box that hides them, and figures longer than their input. Fronts are drawn to scale and scroll of themselves;
 * what they have no room for is in the list below them. A lineage is dragged, and is a list as well.
 */
export function cutText(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const wrong: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) wrong.push(`the page is ${scrollWidth} px wide in a window of ${clientWidth}`);
    const named = (element: Element) => `${element.tagName} .${element.className} “${(element.textContent ?? '').trim().slice(0, 40)}”`;
    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      if (element.closest('.unseen, .pager-pane, .tabs, svg, option, dialog:not([open])')) continue;
      const isInput = element instanceof HTMLInputElement && !['radio', 'checkbox', 'file'].includes(element.type);
      const own = [...element.childNodes].filter((node) => node.nodeType === 3 && node.textContent?.trim());
      if ((!isInput && own.length === 0) || !element.checkVisibility()) continue;
      const { left, right, width } = element.getBoundingClientRect();
      if (width === 0) continue;
      if (!element.closest('.lineage-layer') && (right > clientWidth + 1 || left < -1))
        wrong.push(`sticks out to ${Math.round(right)}: ${named(element)}`);
      const isFigure = isInput && ['decimal', 'numeric'].includes(element.inputMode);
      const hides = isFigure || (!isInput && getComputedStyle(element).overflowX !== 'visible');
      if (hides && element.scrollWidth > element.clientWidth + 1)
        wrong.push(`${element.scrollWidth} px in ${element.clientWidth}: ${named(element)}`);
      const button = element.closest('.bar-stop, button, .button, .chip')?.getBoundingClientRect();
      for (const node of button ? own : []) {
        const range = document.createRange();
        range.selectNodeContents(node);
        const words = range.getBoundingClientRect();
        if (button && (words.left < button.left - 1 || words.right > button.right + 1))
          wrong.push(`runs out of its button: ${named(element)}`);
      }
    }
    return wrong;
  });
}

/** Words smaller than 16 px, a line each. */
export function smallText(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body *')]
      .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
      .filter((element) => !element.closest('.unseen, svg, option') && element.checkVisibility())
      .filter((element) => Number.parseFloat(getComputedStyle(element).fontSize) < 16)
      .map((element) => `${getComputedStyle(element).fontSize}: .${element.className} “${element.textContent?.slice(0, 30)}”`),
  );
}

/** How much of the glass stays covered by what stands still while the page is scrolled, when that is more than a part of it. */
export function coveredGlass(page: Page, most: number): Promise<string[]> {
  return page.evaluate((share) => {
    if (document.querySelector('dialog[open]')) return [];
    // Buttons come out for the keys, whose focus an earlier screen may have left behind.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const still = [...document.querySelectorAll<HTMLElement>('.bar, .screen-head, .screen-actions, .here')].filter((each) => {
      const { position } = getComputedStyle(each);
      return each.checkVisibility() && (position === 'sticky' || position === 'fixed');
    });
    let covered = 0;
    for (let y = 0.5; y < innerHeight; y++) {
      if (
        still.some((each) => {
          const { top, bottom, width } = each.getBoundingClientRect();
          return y >= top && y <= bottom && width > innerWidth / 2;
        })
      )
        covered += 1;
    }
    return covered > share * innerHeight ? [`bars cover ${covered} px of ${innerHeight}`] : [];
  }, most);
}
