import { basename, join } from 'node:path';
import type { Page, TestInfo } from '@playwright/test';
import type { Pointer } from './hand';

/** What a walk took of whoever walked it. */
export type Counts = {
  /** Taps, clicks and drags, and fields typed into. */
  readonly actions: number;
  /** Keys, letter by letter. */
  readonly keys: number;
  /** Seconds that the machine took, without its pictures and checks. */
  readonly seconds: number;
};

/** Labels find their places a moment after the drawing. */
const AT_REST_MS = 400;

/** A job that is walked through and counted: its hands, the pages they work, and a picture of every step. */
export class Walk {
  private readonly info: TestInfo;
  private actions = 0;
  private keys = 0;
  private since = performance.now();
  private pausedMs = 0;
  private pictures = 0;
  /** The hand does something that is counted as a whole. */
  private isWithin = false;

  constructor(info: TestInfo) {
    this.info = info;
  }

  /** Counts from here on. */
  start(): void {
    [this.actions, this.keys, this.pausedMs, this.since] = [0, 0, 0, performance.now()];
  }

  get counts(): Counts {
    const { actions, keys } = this;
    return { actions, keys, seconds: (performance.now() - this.since - this.pausedMs) / 1000 };
  }

  /** Does something that is not part of the job, uncounted. */
  async aside<T>(todo: () => Promise<T>): Promise<T> {
    const from = performance.now();
    const [actions, keys] = [this.actions, this.keys];
    const done = await todo();
    [this.actions, this.keys] = [actions, keys];
    this.pausedMs += performance.now() - from;
    return done;
  }

  async picture(page: Page, step: string): Promise<void> {
    await this.aside(async () => {
      await page.waitForFunction(() => document.fonts.status === 'loaded');
      await page.waitForTimeout(AT_REST_MS);
      const number = String(++this.pictures).padStart(2, '0');
      await page.screenshot({ path: this.file(`${number}-${step}.png`) });
    });
  }

  /** Where something of this walk is kept: beside its pictures. */
  file(name: string): string {
    const job = basename(this.info.file, '.spec.ts');
    return join(this.info.project.outputDir, this.info.project.name, `${job}-${name}`);
  }

  /** A hand on a page whose doings are counted, also what it types without leaving the keyboard. */
  counting(page: Page, hand: Pointer): Pointer {
    const { keyboard } = page;
    const [type, press] = [keyboard.type.bind(keyboard), keyboard.press.bind(keyboard)];
    keyboard.type = async (text, options) => {
      this.count(text === '' ? 0 : 1, text.length);
      await type(text, options);
    };
    keyboard.press = async (key, options) => {
      this.count(0, 1);
      await press(key, options);
    };
    const whole = async (actions: number, keys: number, todo: () => Promise<void>) => {
      this.count(actions, keys);
      this.isWithin = true;
      await todo().finally(() => {
        this.isWithin = false;
      });
    };
    return {
      by: hand.by,
      press: (target) => whole(1, 0, () => hand.press(target)),
      write: (field, text) => whole(1, text.length, () => hand.write(field, text)),
      mark: (target) => whole(1, 0, () => hand.mark(target)),
      choose: (opener, entry) => whole(2, 0, () => hand.choose(opener, entry)),
      tap: (at) => whole(1, 0, () => hand.tap(at)),
      drag: (from, to) => whole(1, 0, () => hand.drag(from, to)),
      longPress: (at) => whole(1, 0, () => hand.longPress(at)),
      zoom: (about, factor) => whole(1, 0, () => hand.zoom(about, factor)),
    };
  }

  private count(actions: number, keys: number): void {
    if (this.isWithin) return;
    this.actions += actions;
    this.keys += keys;
  }
}
