import { expect, type Locator, type Page } from '@playwright/test';

/** A place on the screen in CSS pixels. */
export type Spot = { readonly x: number; readonly y: number };

/** Whoever works the app: with a mouse, with fingers, or with keys alone. A journey is told once and walked by each. */
export type Hand = {
  readonly by: 'mouse' | 'touch' | 'keys';
  /** Presses a button, a row, an option or a tab. */
  readonly press: (target: Locator) => Promise<void>;
  /** Puts a text into a field in place of what is there, and leaves the hand in the field. */
  readonly write: (field: Locator, text: string) => Promise<void>;
  /** Chooses one of a few that are all in sight, or ticks a box. */
  readonly mark: (radioOrBox: Locator) => Promise<void>;
  /** Opens a list and takes an entry out of it. */
  readonly choose: (opener: Locator, entry: string) => Promise<void>;
};

/** A hand that points can also touch the plan. */
export type Pointer = Hand & {
  readonly by: 'mouse' | 'touch';
  readonly tap: (at: Spot) => Promise<void>;
  readonly drag: (from: Spot, to: Spot) => Promise<void>;
  /** Stays down in one place for longer than a tap. */
  readonly longPress: (at: Spot) => Promise<void>;
  /** Scales the plan about a place: the wheel, or two fingers. */
  readonly zoom: (about: Spot, factor: number) => Promise<void>;
};

/** The wheel turns that double the scale, in pixels: what the app promises a mouse. */
const WHEEL_DOUBLE_PX = 320;
const DRAG_STEPS = 6;
/** Longer than any app takes for a long press. */
const LONG_PRESS_MS = 900;

export function pointerHand(page: Page, by: 'mouse' | 'touch'): Pointer {
  const press = (target: Locator) => (by === 'mouse' ? target.click() : target.tap());
  const hand: Hand = {
    by,
    press,
    write: async (field, text) => {
      await press(field);
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.press('Delete');
      await page.keyboard.type(text);
    },
    mark: (target) => press(target.locator('xpath=ancestor::label[1]')),
    choose: async (opener, entry) => {
      await press(opener);
      await press(page.getByRole('option', { name: entry, exact: true }));
      await expect(page.getByRole('listbox')).toHaveCount(0);
    },
  };
  return by === 'mouse' ? { ...hand, ...mouseOn(page) } : { ...hand, ...fingersOn(page) };
}

type OnPlan = Pick<Pointer, 'by' | 'tap' | 'drag' | 'longPress' | 'zoom'>;

function mouseOn(page: Page): OnPlan {
  return {
    by: 'mouse',
    tap: ({ x, y }) => page.mouse.click(x, y),
    drag: async (from, to) => {
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(to.x, to.y, { steps: DRAG_STEPS });
      await page.mouse.up();
    },
    longPress: ({ x, y }) => page.mouse.click(x, y, { delay: LONG_PRESS_MS }),
    zoom: async ({ x, y }, factor) => {
      await page.mouse.move(x, y);
      await page.mouse.wheel(0, -Math.log2(factor) * WHEEL_DOUBLE_PX);
    },
  };
}

function fingersOn(page: Page): OnPlan {
  const gesture = async (tracks: readonly { readonly from: Spot; readonly to: Spot }[]) => {
    const cdp = await page.context().newCDPSession(page);
    const at = (share: number) =>
      tracks.map(({ from, to }, id) => ({
        id,
        x: from.x + (to.x - from.x) * share,
        y: from.y + (to.y - from.y) * share,
      }));
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
    for (let step = 1; step <= DRAG_STEPS; step++)
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / DRAG_STEPS) });
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await cdp.detach();
  };
  return {
    by: 'touch',
    tap: ({ x, y }) => page.touchscreen.tap(x, y),
    drag: (from, to) => gesture([{ from, to }]),
    longPress: async ({ x, y }) => {
      const cdp = await page.context().newCDPSession(page);
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
      await page.waitForTimeout(LONG_PRESS_MS);
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      await cdp.detach();
    },
    zoom: ({ x, y }, factor) => {
      const apart = 40;
      return gesture([
        { from: { x: x - apart, y }, to: { x: x - apart * factor, y } },
        { from: { x: x + apart, y }, to: { x: x + apart * factor, y } },
      ]);
    },
  };
}

/** More Tab presses than any screen has stops. */
const MOST_STOPS = 160;
const MOST_ENTRIES = 120;

/** Never touches the mouse: Tab, or Shift and Tab, to what is wanted, then Enter, Space, arrows and letters. */
export function keyboardHand(page: Page): Hand {
  const holdsFocus = (target: Locator) => target.evaluate((element) => element === document.activeElement);
  /** Where a target lies from what has the focus, as one sees on the screen. */
  const wayTo = (target: Locator) =>
    target.evaluate((element) => {
      const { activeElement, body } = document;
      if (element === activeElement) return 'here';
      const from = activeElement ?? body;
      const before = (from.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING) !== 0;
      return before && from !== body ? 'back' : 'on';
    });
  const goTo = async (target: Locator) => {
    await expect(target).toBeVisible();
    for (let stop = 0; stop < MOST_STOPS; stop++) {
      const way = await wayTo(target);
      if (way === 'here') return;
      await page.keyboard.press(way === 'back' ? 'Shift+Tab' : 'Tab');
    }
    throw new Error(`Tab never comes to ${target}`);
  };
  const arrowTo = async (group: Locator, done: () => Promise<boolean>) => {
    for (let stop = 0; stop < MOST_STOPS; stop++) {
      if (await group.evaluate((element) => element.contains(document.activeElement))) break;
      await page.keyboard.press('Tab');
    }
    for (let entry = 0; entry < MOST_ENTRIES; entry++) {
      if (await done()) return;
      await page.keyboard.press('ArrowRight');
    }
    throw new Error(`The arrow keys never come to the wanted one of ${group}`);
  };
  return {
    by: 'keys',
    press: async (target) => {
      if ((await target.getAttribute('role')) === 'tab') {
        const isOn = async () => (await target.getAttribute('aria-selected')) === 'true';
        await arrowTo(page.getByRole('tablist'), isOn);
        return;
      }
      await goTo(target);
      await page.keyboard.press('Enter');
    },
    write: async (field, text) => {
      await goTo(field);
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.press('Delete');
      await page.keyboard.type(text);
    },
    mark: async (target) => {
      if ((await target.getAttribute('type')) === 'radio') {
        await arrowTo(target.locator('xpath=ancestor::*[@role="radiogroup"]'), () => target.isChecked());
        return;
      }
      await goTo(target);
      await page.keyboard.press('Space');
    },
    choose: async (opener, entry) => {
      await goTo(opener);
      await page.keyboard.press('Enter');
      const list = page.getByRole('listbox');
      await expect(list.getByRole('option').and(page.locator(':focus'))).toHaveCount(1);
      const inHand = list.locator('[role="option"]:focus');
      // its first letters find an entry; where several begin alike, arrows go on
      await page.keyboard.press('Home');
      await page.keyboard.type(entry);
      for (let step = 0; step < MOST_ENTRIES; step++) {
        if ((await inHand.textContent())?.trim() === entry) break;
        await page.keyboard.press('ArrowDown');
      }
      expect((await inHand.textContent())?.trim()).toBe(entry);
      await page.keyboard.press('Enter');
      await expect(list).toHaveCount(0);
      await expect
        .poll(() => holdsFocus(opener).catch(() => true), 'the focus comes back, or the form has gone')
        .toBe(true);
    },
  };
}
