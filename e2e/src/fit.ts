import type { Page } from '@playwright/test';

/** What a gloved finger needs at the least, in CSS pixels (the target size of WCAG 2.2, 2.5.5). */
const LEAST_TARGET_PX = 44;

/** Every place on the screen where something is cut off, runs out to the side or below, or is too small to hit; empty when all fits. */
export async function misfitsOn(page: Page): Promise<readonly string[]> {
  return await page.evaluate((least) => {
    const found: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > window.innerWidth)
      found.push(`page ${root.scrollWidth} px wide in ${window.innerWidth}`);
    if (document.querySelector('main[aria-label="Plan"]') && root.scrollHeight > window.innerHeight)
      found.push(`the plan's screen is ${root.scrollHeight} px high in ${window.innerHeight}`);
    for (const box of document.querySelectorAll<HTMLElement>('aside, aside *, header, main')) {
      const sideways = getComputedStyle(box).overflowX;
      if ((sideways === 'auto' || sideways === 'scroll') && box.scrollWidth > box.clientWidth + 1)
        found.push(`scrolls sideways: ${box.className}`);
    }
    const targets =
      'button, [role="tab"], label:has(input[type="radio"], input[type="checkbox"]), input[type="text"], textarea';
    for (const target of document.querySelectorAll<HTMLElement>(targets)) {
      const { width, height } = target.getBoundingClientRect();
      const shown =
        target.checkVisibility({ visibilityProperty: true }) && !target.closest('[aria-hidden="true"]');
      if (!shown || width < 2 || height < 2) continue;
      const name = `${target.tagName.toLowerCase()} "${target.getAttribute('aria-label') ?? target.textContent.replace(/\s+/g, ' ')}"`;
      if (Math.min(width, height) < least)
        found.push(`${name} is ${Math.round(width)} × ${Math.round(height)}`);
      if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) continue;
      if (target.scrollWidth > target.clientWidth + 1)
        found.push(`${name} is cut off: ${target.scrollWidth} in ${target.clientWidth}`);
      for (const part of target.querySelectorAll<HTMLElement>('*'))
        if (
          part.clientWidth > 1 &&
          getComputedStyle(part).overflowX !== 'visible' &&
          part.scrollWidth > part.clientWidth + 1
        )
          found.push(`${name} shows its text shortened`);
      if (target.scrollHeight > target.clientHeight + 1)
        found.push(`${name} is cut off below: ${target.scrollHeight} in ${target.clientHeight}`);
    }
    return found;
  }, LEAST_TARGET_PX);
}
