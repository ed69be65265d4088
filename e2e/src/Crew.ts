import { expect, type Locator, type Page } from '@playwright/test';
import { Home } from './Home';
import type { Hand } from './hand';

/** The crew view: one mark at a time, what is ticked, what was found, and the way back. */
export class Crew {
  readonly page: Page;
  readonly hand: Hand;

  constructor(page: Page, hand: Hand) {
    this.page = page;
    this.hand = hand;
  }

  /** Takes a site file in on the first screen and goes to its crew view. */
  async take(file: { name: string; mimeType: string; buffer: Buffer }, site: string): Promise<void> {
    const home = new Home(this.page, this.hand);
    await home.open();
    await home.openFile(file);
    await expect(this.page.getByRole('main', { name: 'Plan' })).toBeVisible();
    await this.hand.press(this.page.getByRole('button', { name: 'All sites', exact: true }));
    await this.press(`Crew view of ${site}`);
    await expect(this.sheet).toBeVisible();
    // the hole comes from a worker
    await expect(this.sheet.getByText('…', { exact: true })).toHaveCount(0);
  }

  /** The sheet of the mark in hand, or the form of what was found there. */
  get sheet(): Locator {
    return this.page.getByRole('main');
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  }

  press(name: string | RegExp): Promise<void> {
    return this.hand.press(this.button(name));
  }

  /** Goes on until a mark is in hand; `next`: what the button says. */
  async goTo(label: string, next = 'Next mark'): Promise<void> {
    const at = this.page.getByRole('main', { name: label, exact: true });
    while ((await at.count()) === 0) await this.press(next);
    await expect(at).toBeVisible();
  }

  /** Presses one button of a stepper so many times. */
  async step(name: string, times: number): Promise<void> {
    for (let i = 0; i < times; i++) await this.press(name);
  }

  isTicked(name: string): Promise<string | null> {
    return this.button(name).getAttribute('aria-pressed');
  }
}
