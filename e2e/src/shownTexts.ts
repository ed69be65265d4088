import type { Page } from '@playwright/test';

/** Every text that is shown, and every name that a screen reader tells, as they stand on the page. */
export function shownTexts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (text !== '' && element?.closest('script, style') === null) texts.push(text);
    }
    for (const element of document.body.querySelectorAll('*')) {
      for (const name of ['aria-label', 'title', 'alt', 'placeholder', 'aria-roledescription'])
        texts.push(element.getAttribute(name) ?? '');
    }
    return [...new Set(texts)].filter((text) => text !== '');
  });
}
