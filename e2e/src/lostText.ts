import type { Page } from '@playwright/test';

/** What this much of a letter's height or a word's width may hang out of its box, in pixels: accents, italics, rounding. */
const SLACK_PX = 3;

/**
 * Texts that cannot be read where they stand: cut off by a box that does not scroll, beside the page where nothing scrolls to, or under
 * a line of text that lies over them. What is there for readers alone, and what says by an ellipsis that it goes on, is left out.
 */
export function lostText(page: Page): Promise<readonly string[]> {
  return page.evaluate((slack) => {
    type Box = {
      readonly left: number;
      readonly right: number;
      readonly top: number;
      readonly bottom: number;
    };
    const isHeard = (style: CSSStyleDeclaration) =>
      style.clipPath !== 'none' || style.visibility === 'hidden';
    /** Why a text is not seen whole; null when it is, or can be scrolled to. */
    const lost = (element: Element, text: Box): string | null => {
      let [across, down] = [false, false];
      for (let box: Element | null = element; box !== null; box = box.parentElement) {
        const style = getComputedStyle(box);
        if (isHeard(style) || style.textOverflow === 'ellipsis' || box.getAttribute('aria-hidden') === 'true')
          return null;
        const { left, right, top, bottom } = box.getBoundingClientRect();
        const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
        across ||= scrolls(style.overflowX);
        down ||= scrolls(style.overflowY);
        const cuts = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
        if (!across && cuts(style.overflowX) && (text.left < left - slack || text.right > right + slack))
          return `cut off across by ${box.className}`;
        if (!down && cuts(style.overflowY) && (text.top < top - slack || text.bottom > bottom + slack))
          return `cut off in height by ${box.className}`;
      }
      const { clientWidth } = document.documentElement;
      if (!across && (text.left < -slack || text.right > clientWidth + slack)) return 'beside the page';
      return null;
    };
    const found: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      if (
        words === '' ||
        node.parentElement === null ||
        node.parentElement.closest('svg, script, style') !== null
      )
        continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const text = range.getBoundingClientRect();
      if (text.width === 0) continue;
      const why = lost(node.parentElement, text);
      if (why !== null) found.push(`“${words}” ${why}`);
    }
    return found;
  }, SLACK_PX);
}
