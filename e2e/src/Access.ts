import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Success criteria of WCAG 2.0, 2.1 and 2.2 at levels A and AA, as far as axe-core can tell them. */
const CRITERIA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const THEMES = ['paper', 'night', 'sun'] as const;

/** Holds what is shown against WCAG 2.2 AA with axe-core, and gathers what it finds. */
export class Access {
  readonly page: Page;
  private readonly found: string[] = [];

  constructor(page: Page) {
    this.page = page;
  }

  /** Looks at the page as it is now: at everything in the theme that is on, at colours in the others. */
  async look(at: string): Promise<void> {
    // what fades or slides has come to rest
    await this.page.evaluate(() =>
      Promise.all(document.getAnimations().map((animation) => animation.finished.catch(() => undefined))),
    );
    const before = await this.page.evaluate(() => document.documentElement.dataset.theme);
    for (const theme of THEMES) {
      await this.page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      const axe = new AxeBuilder({ page: this.page });
      const { violations } = await (theme === before
        ? axe.withTags(CRITERIA).analyze()
        : axe.withRules(['color-contrast']).analyze());
      for (const { id, help, nodes } of violations)
        for (const { target, html, failureSummary } of nodes) {
          const place = target.join(' ');
          if (id === 'target-size' && (await this.isLargeElsewhere(place))) continue;
          this.found.push(`${at}, ${theme}: ${id} (${help}) at ${place}, ${html}: ${failureSummary}`);
        }
    }
    await this.page.evaluate((name) => {
      document.documentElement.dataset.theme = name ?? 'paper';
    }, before);
  }

  /** Whether what was partly below something that stays in place is large enough once it is scrolled to. */
  private async isLargeElsewhere(place: string): Promise<boolean> {
    await this.page.locator(place).evaluate((element) => element.scrollIntoView({ block: 'center' }));
    const { violations } = await new AxeBuilder({ page: this.page })
      .include(place)
      .withRules(['target-size'])
      .analyze();
    return violations.length === 0;
  }

  /** Nothing was found in all that was looked at. */
  clear(): void {
    expect(this.found).toEqual([]);
  }
}
