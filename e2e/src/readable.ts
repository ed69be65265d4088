import type { Page } from '@playwright/test';

/** Buttons and fields that are smaller than a gloved finger asks for, in CSS pixels, by their names. */
export function smallTargets(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate((px) => {
    const targets = document.querySelectorAll<HTMLElement>(
      'button, label:has(input), input[type="text"], textarea',
    );
    return [...targets].flatMap((element) => {
      const { width, height } = element.getBoundingClientRect();
      const isShown = width > 1 && height > 1 && element.checkVisibility({ opacityProperty: true });
      const name = element.getAttribute('aria-label') ?? element.textContent;
      return isShown && Math.min(width, height) < px - 0.5 ? [`${name} ${width}×${height}`] : [];
    });
  }, least);
}

/** Text whose contrast to what is behind it is below a ratio (WCAG 2.2, 1.4.6; relative luminance as defined there), and the least ratio. */
export function faintTexts(
  page: Page,
  ratio: number,
): Promise<{ readonly faint: readonly string[]; readonly least: number }> {
  return page.evaluate((wanted) => {
    const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    if (canvas === null) throw new Error('no canvas');
    const rgba = (color: string): readonly number[] => {
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = color;
      canvas.fillRect(0, 0, 1, 1);
      return [...canvas.getImageData(0, 0, 1, 1).data];
    };
    const luminance = ([r = 0, g = 0, b = 0]: readonly number[]) => {
      const [x, y, z] = [r, g, b].map((c) => {
        const s = c / 255;
        return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
      }) as [number, number, number];
      return 0.2126 * x + 0.7152 * y + 0.0722 * z;
    };
    const behind = (element: Element | null): readonly number[] => {
      for (let at = element; at !== null; at = at.parentElement) {
        const color = rgba(getComputedStyle(at).backgroundColor);
        if ((color[3] ?? 0) > 250) return color;
      }
      return [255, 255, 255];
    };
    let least = Infinity;
    const faint: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (element === null || text === '' || !element.checkVisibility()) continue;
      // what cannot be pressed now need not be read (WCAG 2.2, 1.4.3: inactive components)
      if (element.closest('[data-disabled], script, style, svg, option, select') !== null) continue;
      const [a, b] = [luminance(rgba(getComputedStyle(element).color)), luminance(behind(element))];
      const contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      least = Math.min(least, contrast);
      if (contrast < wanted) faint.push(`${text.slice(0, 40)} ${contrast.toFixed(2)}`);
    }
    return { faint, least };
  }, ratio);
}
