import type { Page } from '@playwright/test';

/**
 * Goes on by Tab until the focus comes round or `most` stops are made, and gives those where nobody would see it: no outline on what has
 * it or on what stands for it, or something else lying over its middle.
 */
export async function focusUnseen(
  page: Page,
  most: number,
): Promise<{ stops: number; unseen: readonly string[] }> {
  const unseen: string[] = [];
  let stops = 0;
  for (; stops < most; stops++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const held = document.activeElement;
      if (held === null || held === document.body) return null;
      if (held.hasAttribute('data-was-here')) return null;
      held.setAttribute('data-was-here', '');
      const name = `${held.tagName} ${held.getAttribute('aria-label') ?? held.textContent?.trim().slice(0, 40)}`;
      // a radio or a tick is a hidden input inside of what is seen
      const seen = held.matches('input[type=radio], input[type=checkbox], input[type=range]')
        ? (held.closest('label, [data-rac]') ?? held)
        : held;
      const outlined = [seen, ...seen.querySelectorAll('*')].some((each) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(each);
        return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
      });
      const box = seen.getBoundingClientRect();
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      const over = document.elementFromPoint(x, y);
      const isOpen = over !== null && (seen.contains(over) || over.contains(seen));
      return {
        name,
        problem: !outlined ? 'no outline' : !isOpen ? `under ${over?.outerHTML.slice(0, 80)}` : null,
      };
    });
    if (at === null) break;
    if (at.problem !== null) unseen.push(`${at.name}: ${at.problem}`);
  }
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('[data-was-here]')) each.removeAttribute('data-was-here');
  });
  return { stops, unseen };
}
