import { expect, type Locator } from '@playwright/test';
import type { Screen } from './Screen';

/** The step that says what stands in the way: planned digs, what they take, and what is found about them. */
export class Digs {
  readonly screen: Screen;

  constructor(screen: Screen) {
    this.screen = screen;
  }

  /** Plans a trench along a pipe between two stations, and leaves its card open. */
  async trench(path: string, from: string, to: string): Promise<void> {
    await this.screen.choose('Trench along a pipe', path);
    await this.screen.fill('From station', from);
    await this.screen.fill('To station', to);
    await expect(this.dig(`Trench on ${path}`)).toBeVisible();
  }

  /** The card of a dig whose name begins so. */
  dig(name: string): Locator {
    return this.screen.card.getByRole('region', { name: new RegExp(`^${name}`) });
  }

  /** One line of what a dig takes. */
  result(name: string): Locator {
    return this.screen.card.getByRole('group').filter({ hasText: new RegExp(`^${name}`) });
  }

  /** The first number of a line of what a dig takes. */
  async amount(name: string): Promise<number> {
    return Number(/[\d.]+/.exec((await this.result(name).textContent()) ?? '')?.[0]);
  }

  /** Something that stands in the way, by words of its line; its list must be open. */
  finding(words: string | RegExp): Locator {
    return this.screen.card.getByRole('listitem').filter({ hasText: words });
  }

  /** Opens the line of a finding to all that is said of it. */
  async open(words: string | RegExp): Promise<Locator> {
    const line = this.finding(words).getByRole('button', { expanded: false });
    if ((await line.count()) > 0) await this.screen.hand.press(line.first());
    return this.finding(words).first();
  }

  /** A thing in the list of what is near. */
  near(words: string | RegExp): Locator {
    return this.screen.card.getByRole('button').filter({ hasText: words });
  }

  /** Says what the soil is, on the step's own card. */
  async soil(name: string): Promise<void> {
    const trigger = this.screen.button(/^The ground/);
    if ((await trigger.getAttribute('aria-expanded')) === 'false') await this.screen.hand.press(trigger);
    await this.screen.choose('Soil, as a competent person judged it', name);
  }

  /** Opens the findings of one kind, if they are there and folded. */
  async unfold(heading: 'Look at' | 'Worth knowing'): Promise<void> {
    const trigger = this.screen.button(new RegExp(`^${heading}`));
    if ((await trigger.getAttribute('aria-expanded')) === 'false') await this.screen.hand.press(trigger);
  }
}
