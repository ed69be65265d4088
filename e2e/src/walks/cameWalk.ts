import { expect } from '@playwright/test';
import type { Screen } from '../Screen';
import type { CrewLanguage } from './crewWalk';
import type { Look } from './look';

/** Goes through what a link can bring, with the Hand-off step of a site in front: the plan as it came to who has it already, and a link that was cut. */
export async function walkWhatCame(
  screen: Screen,
  languages: readonly CrewLanguage[],
  look: Look,
): Promise<void> {
  const { page, hand } = screen;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await screen.goTo('Hand-off');
  await screen.press('Copy the link');
  await expect(screen.notice).toContainText('on the clipboard');
  const whole = await page.evaluate(() => navigator.clipboard.readText());
  await screen.saved();
  for (const [address, at] of [
    [whole, 'a plan has come'],
    [whole.slice(0, -200), 'a link that was cut'],
  ] as const) {
    await page.goto('about:blank');
    await page.goto(address);
    for (const language of languages) {
      await hand.mark(page.getByRole('radio', { name: language }));
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      await look(`${at}, ${language}`);
    }
  }
}
