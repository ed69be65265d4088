import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './hand';

/** The first screen: the sites on this device, and the ways to another. */
export class Home {
  readonly page: Page;
  readonly hand: Hand;

  constructor(page: Page, hand: Hand) {
    this.page = page;
    this.hand = hand;
  }

  async open(): Promise<void> {
    await this.page.goto('./');
    await expect(this.page.getByRole('heading', { name: 'Footmark', level: 1 })).toBeVisible();
    // with the lettering lines break otherwise: what is about to be pressed would move
    await this.page.evaluate(async () => void (await document.fonts.ready));
  }

  async press(name: 'New site' | 'Open the sample site'): Promise<void> {
    await this.hand.press(this.page.getByRole('button', { name, exact: true }));
    await expect(this.page.getByRole('main', { name: 'Plan' })).toBeVisible();
  }

  /** Chooses a file on the device in the dialog that 'Open a site file' brings up. */
  async openFile(file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
    const dialog = this.page.waitForEvent('filechooser');
    await this.hand.press(this.page.getByRole('button', { name: 'Open a site file', exact: true }));
    await (await dialog).setFiles(file);
  }

  get problem(): Locator {
    return this.page.getByRole('alert');
  }

  get sites(): Locator {
    return this.page.getByRole('region', { name: 'Sites on this device' }).getByRole('listitem');
  }
}
