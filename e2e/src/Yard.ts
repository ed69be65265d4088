import { expect } from '@playwright/test';
import type { Screen } from './Screen';

/** The yard's card: putting things in as they are measured. */
export class Yard {
  readonly screen: Screen;

  constructor(screen: Screen) {
    this.screen = screen;
  }

  async draw(kind: string): Promise<void> {
    await this.screen.press(kind);
    await expect(this.screen.card.getByRole('region', { name: `Draw: ${kind}` })).toBeVisible();
  }

  /** Types a leg: which way, then how long, then Enter. */
  async leg(direction: string, length: string): Promise<void> {
    await this.screen.write(/^(Turn or bearing|Bearing or azimuth)$/, direction);
    await this.screen.page.keyboard.press('Tab');
    await this.screen.page.keyboard.type(length);
    await this.screen.page.keyboard.press('Enter');
    await expect(this.screen.field('Length')).toHaveValue('');
  }

  async finish(): Promise<void> {
    await this.screen.press('Finish');
  }

  /** The card of a thing that has just been finished or chosen. */
  async isOpen(name: string): Promise<void> {
    await expect(this.screen.card.getByRole('region', { name, exact: true })).toBeVisible();
  }

  async rename(to: string): Promise<void> {
    await this.screen.fill('Name', to);
    await this.isOpen(to);
  }

  async back(): Promise<void> {
    await this.screen.press('Yard');
  }

  async byCoordinates(east: string, north: string, submit: string): Promise<void> {
    await this.screen.press('Type how it was measured');
    await this.screen.choose('Measured by', 'Coordinates');
    await this.screen.write('East (x)', east);
    await this.screen.write('North (y)', north);
    await this.screen.press(submit);
  }

  async byOffset(
    line: { readonly from: string; readonly to: string },
    { along, out, side }: { readonly along: string; readonly out: string; readonly side: 'Left' | 'Right' },
    submit: string,
  ): Promise<void> {
    await this.screen.press('Type how it was measured');
    await this.screen.choose('Measured by', 'Offset from a line');
    await this.screen.choose('Line from', line.from);
    await this.screen.choose('to', line.to);
    await this.screen.write(/^Along from /, along);
    await this.screen.write('Square off it', out);
    await this.screen.pick(/^Side/, side);
    await this.screen.press(submit);
  }

  async byTapes(
    tapes: readonly [
      { readonly from: string; readonly length: string },
      { readonly from: string; readonly length: string },
    ],
    side: 'Left' | 'Right',
    submit: string,
  ): Promise<void> {
    await this.screen.press('Type how it was measured');
    for (const [i, { from, length }] of tapes.entries()) {
      await this.screen.choose(`Tape ${i + 1} from`, from);
      await this.screen.write('Length', length, i);
    }
    await this.screen.pick(/^Side/, side);
    await this.screen.press(submit);
  }
}
