import { expect, type Locator } from '@playwright/test';
import type { Measured, MeasuredThing } from './measuredYard';
import type { Screen } from './Screen';

type Spot = Exclude<Measured, { by: 'leg' | 'arc' | 'at' }>;

/** The yard's card: putting things in as they are measured. */
export class Yard {
  readonly screen: Screen;

  constructor(screen: Screen) {
    this.screen = screen;
  }

  async draw(kind: string): Promise<void> {
    if ((await this.screen.button(kind).count()) === 0) await this.screen.press('All kinds');
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

  /** Puts a whole thing in as it was measured, with its name, and leaves its card open. */
  async enter(thing: MeasuredThing): Promise<void> {
    const { screen } = this;
    if (thing.kind === 'Pipe') {
      await screen.goTo('Line');
      await screen.press(/^Draw (the pipe|a branch)$/);
    } else await this.draw(thing.kind);
    for (const point of thing.points) await this.point(point, thing);
    if (thing.shape !== 'point') await this.finish();
    const name = screen.field('Name');
    await expect(name).toBeVisible();
    if ((await name.inputValue()) !== thing.name) await this.rename(thing.name);
    if (thing.closing === undefined) return;
    await screen.press('Type the closing course');
    await screen.write('Turn or bearing', thing.closing.direction.text);
    await screen.write('Length', thing.closing.length.text);
    await screen.page.keyboard.press('Enter');
    const share = screen.card.getByRole('checkbox', {
      name: 'Share the misclosure out by the compass rule',
    });
    if (thing.balanced) await screen.hand.mark(share);
    await expect(share).toBeChecked({ checked: thing.balanced === true });
  }

  private async point(point: Measured, thing: MeasuredThing): Promise<void> {
    const { screen } = this;
    switch (point.by) {
      case 'leg':
        await this.leg(point.direction.text, point.length.text);
        return;
      case 'arc': {
        await screen.press('A curve');
        await screen.pick(/^The curve turns/, point.turn);
        await screen.write('Radius', point.radius.text);
        await screen.write('or central angle', point.angle.text);
        await screen.press('Add this curve');
        await expect(screen.field('Radius')).toHaveValue('');
        return;
      }
      case 'at':
        await screen.choose('Use a point that is there', point.point);
        return;
      default: {
        const alone = thing.shape === 'point';
        await this.measure(point, alone ? `Place the ${thing.kind.toLowerCase()}` : 'Place this point');
      }
    }
  }

  /** Says in the measuring form how a point was measured, and takes it over. */
  async measure(spot: Spot, submit: string): Promise<void> {
    await this.screen.press(/^(Type how it was measured|Measure the next point|Correct the measurement)$/);
    await this.fillSpot(spot);
    await this.screen.hand.press(this.form.getByRole('button', { name: submit, exact: true }));
    await expect(this.form).toHaveCount(0);
  }

  /** The form that takes down how a point was measured; legs have one of their own. */
  get form(): Locator {
    return this.screen.card.locator('form').filter({ hasText: 'Measured by' });
  }

  private async fillSpot(spot: Spot): Promise<void> {
    const { hand } = this.screen;
    const write = (label: string | RegExp, text: string, nth = 0) => {
      const fields = this.form.getByRole(
        'textbox',
        typeof label === 'string' ? { name: label, exact: true } : { name: label },
      );
      return hand.write(fields.nth(nth), text);
    };
    const choose = (label: string, entry: string) =>
      hand.choose(this.form.getByRole('button', { name: new RegExp(`(^| )${label}$`) }), entry);
    const pick = async (group: RegExp, option: string) => {
      const radios = this.form.getByRole('radiogroup', { name: group });
      await hand.mark(radios.getByRole('radio', { name: option, exact: true }));
    };
    switch (spot.by) {
      case 'coordinates':
        await choose('Measured by', 'Coordinates');
        await write('East (x)', spot.east.text);
        await write('North (y)', spot.north.text);
        return;
      case 'bearing':
        await choose('Measured by', 'Bearing and distance');
        await choose('From', spot.from);
        await write('Bearing or azimuth', spot.direction.text);
        await write('Distance', spot.distance.text);
        return;
      case 'offset':
        await choose('Measured by', 'Offset from a line');
        await choose('Line from', spot.from);
        await choose('to', spot.to);
        await write(/^Along from /, spot.along.text);
        await write('Square off it', spot.out.text);
        await pick(/^Side/, spot.side);
        return;
      case 'between':
        await choose('Measured by', 'Between two points');
        await choose('Between', spot.from);
        await choose('and', spot.to);
        await pick(/^How far along/, spot.share);
        return;
      case 'tapes':
        for (const [i, { from, length }] of spot.tapes.entries()) {
          if (i > 1) await hand.press(this.form.getByRole('button', { name: 'Another tape' }));
          await choose(`Tape ${i + 1} from`, from);
          await write('Length', length.text, i);
          // the side is asked for when two tapes leave it open
          if (i === 1) await pick(/^Side/, spot.side);
        }
    }
  }
}
