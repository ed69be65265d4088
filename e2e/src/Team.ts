import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './hand';

type Way = { readonly url: string; readonly user: string; readonly password: string };

/** The team's part of the first screen. */
export class Team {
  readonly page: Page;
  readonly hand: Hand;

  constructor(page: Page, hand: Hand) {
    this.page = page;
    this.hand = hand;
  }

  async open(): Promise<void> {
    const fold = this.page.getByRole('button', { name: /^Team: / });
    await expect(fold).toBeVisible();
    if ((await fold.getAttribute('aria-expanded')) !== 'true') await this.hand.press(fold);
  }

  async join({ url, user, password }: Way, typed = password): Promise<void> {
    await this.open();
    await this.hand.write(this.page.getByRole('textbox', { name: 'Address of the team’s database' }), url);
    await this.hand.write(this.page.getByRole('textbox', { name: 'User name' }), user);
    await this.hand.write(this.page.getByLabel('Password'), typed);
    await this.hand.press(this.page.getByRole('button', { name: 'Join the team' }));
  }

  get problem(): Locator {
    return this.page.getByRole('alert');
  }

  get status(): Locator {
    return this.page.getByRole('region', { name: 'Sites on this device' }).getByRole('status');
  }
}
