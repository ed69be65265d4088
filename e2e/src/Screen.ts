import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './hand';

export type Step = 'Yard' | 'Line' | 'Runs' | 'Marks' | 'Route' | 'Hand-off';

/** The open site as one sees it: the strip on top, the plan, and the card of the step in hand. Things go by their names. */
export class Screen {
  readonly page: Page;
  readonly hand: Hand;
  readonly card: Locator;

  constructor(page: Page, hand: Hand) {
    this.page = page;
    this.hand = hand;
    this.card = page.getByRole('complementary', { name: 'Card' });
  }

  tab(step: Step): Locator {
    return this.card.getByRole('tab', { name: new RegExp(`^${step}\\b`) });
  }

  async goTo(step: Step): Promise<void> {
    await this.hand.press(this.tab(step));
    await expect(this.tab(step)).toHaveAttribute('aria-selected', 'true');
    // until its code has come, the card that was there before is
    const title = step === 'Route' ? 'What stands in the way' : step;
    await expect(this.card.getByRole('heading', { level: 2, name: title, exact: true })).toBeVisible();
  }

  button(name: string | RegExp): Locator {
    return this.card.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  }

  press(name: string | RegExp): Promise<void> {
    return this.hand.press(this.button(name));
  }

  field(label: string | RegExp, nth = 0): Locator {
    const found = this.card.getByRole(
      'textbox',
      typeof label === 'string' ? { name: label, exact: true } : { name: label },
    );
    return found.nth(nth);
  }

  write(label: string | RegExp, text: string, nth = 0): Promise<void> {
    return this.hand.write(this.field(label, nth), text);
  }

  /** Writes into a field that is taken over when it is left. */
  async fill(label: string | RegExp, text: string): Promise<void> {
    await this.write(label, text);
    await this.page.keyboard.press('Enter');
  }

  /** The button of a list to choose from: its name is the chosen entry, then the label. */
  chooser(label: string): Locator {
    return this.card.getByRole('button', { name: new RegExp(`(^| )${label}$`) });
  }

  choose(label: string, entry: string, nth = 0): Promise<void> {
    return this.hand.choose(this.chooser(label).nth(nth), entry);
  }

  async pick(group: RegExp, option: string): Promise<void> {
    const radios = this.card.getByRole('radiogroup', { name: group });
    await this.hand.mark(radios.getByRole('radio', { name: option, exact: true }));
  }

  /** The row of a list whose text begins so. */
  row(name: string): Locator {
    return this.card.getByRole('listitem').getByRole('button', { name: new RegExp(`^${name}`) });
  }

  async undo(): Promise<string> {
    return await this.history(/^Undo: /);
  }

  async redo(): Promise<string> {
    return await this.history(/^Redo: /);
  }

  private async history(name: RegExp): Promise<string> {
    const button = this.page.getByRole('banner').getByRole('button', { name });
    const label = (await button.getAttribute('aria-label')) ?? '';
    await this.hand.press(button);
    return label.replace(name, '');
  }

  async saved(): Promise<void> {
    await expect(this.page.getByText('Saved on this device', { exact: true })).toBeVisible();
  }

  get notice(): Locator {
    return this.page.getByRole('main', { name: 'Plan' }).getByRole('status');
  }
}
