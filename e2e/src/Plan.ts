import { expect, type Page } from '@playwright/test';
import type { Pointer, Spot } from './hand';

/** A place in the site frame, in metres: x east, y north. */
export type Place = { readonly x: number; readonly y: number };

/** A wheel has come to rest when it has not turned for this long. */
const WHEEL_REST_MS = 200;

type Sight = { readonly screen: Spot; readonly plan: Place };

/** The drawing surface. It learns its scale from two things that were tapped into it, and follows what it is told of pans and zooms. */
export class Plan {
  private readonly page: Page;
  private readonly hand: Pointer;
  private sight: { origin: Spot; pxPerMetre: number } | null = null;

  constructor(page: Page, hand: Pointer) {
    this.page = page;
    this.hand = hand;
  }

  async box(): Promise<{ x: number; y: number; width: number; height: number }> {
    const box = await this.page.getByRole('main', { name: 'Plan' }).boundingBox();
    if (box === null) throw new Error('there is no plan on the screen');
    return box;
  }

  /** A place on the screen by shares of the plan's width and height, on a whole pixel. */
  async share(across: number, down: number): Promise<Spot> {
    const box = await this.box();
    return { x: Math.round(box.x + box.width * across), y: Math.round(box.y + box.height * down) };
  }

  /** Takes the scale and the origin from two things that were tapped in, and holds them against a turned or stretched plan. */
  learn(a: Sight, b: Sight): void {
    const pxPerMetre =
      Math.hypot(b.screen.x - a.screen.x, b.screen.y - a.screen.y) /
      Math.hypot(b.plan.x - a.plan.x, b.plan.y - a.plan.y);
    this.sight = {
      pxPerMetre,
      origin: { x: a.screen.x - a.plan.x * pxPerMetre, y: a.screen.y + a.plan.y * pxPerMetre },
    };
    const seen = this.onScreen(b.plan);
    expect(
      Math.hypot(seen.x - b.screen.x, seen.y - b.screen.y),
      'the plan is north up, to one scale',
    ).toBeLessThan(0.5);
  }

  private known(): { origin: Spot; pxPerMetre: number } {
    if (this.sight === null) throw new Error('the scale of the plan is not known yet');
    return this.sight;
  }

  get pxPerMetre(): number {
    return this.known().pxPerMetre;
  }

  onScreen(place: Place): Spot {
    const { origin, pxPerMetre } = this.known();
    return { x: origin.x + place.x * pxPerMetre, y: origin.y - place.y * pxPerMetre };
  }

  tapScreen(spot: Spot): Promise<void> {
    return this.hand.tap(spot);
  }

  tap(place: Place): Promise<void> {
    return this.hand.tap(this.onScreen(place));
  }

  longPress(place: Place): Promise<void> {
    return this.hand.longPress(this.onScreen(place));
  }

  drag(from: Place, to: Place): Promise<void> {
    return this.hand.drag(this.onScreen(from), this.onScreen(to));
  }

  /** Shoves the paper by screen pixels, from a bare place. */
  async pan(from: Place, by: Spot): Promise<void> {
    const start = this.onScreen(from);
    await this.hand.drag(start, { x: start.x + by.x, y: start.y + by.y });
    const { origin, pxPerMetre } = this.known();
    this.sight = { origin: { x: origin.x + by.x, y: origin.y + by.y }, pxPerMetre };
  }

  async zoom(about: Place, factor: number): Promise<void> {
    const fixed = this.onScreen(about);
    await this.hand.zoom(fixed, factor);
    await this.page.waitForTimeout(WHEEL_REST_MS);
    const pxPerMetre = this.known().pxPerMetre * factor;
    this.sight = {
      pxPerMetre,
      origin: { x: fixed.x - about.x * pxPerMetre, y: fixed.y + about.y * pxPerMetre },
    };
  }
}
