import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

test('the sample site with a mark and its tapes', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Open the sample site' }).click();
  const card = page.getByRole('complementary', { name: 'Card' });
  await card.getByRole('tab', { name: /^Marks/ }).click();
  await card.getByRole('button', { name: /^A7/ }).click();
  await expect(card.getByRole('region', { name: 'Mark A7' })).toBeVisible();
  await page.getByRole('button', { name: 'Show the whole yard' }).click();
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(500); // labels find their places a moment after the drawing
  await page.screenshot({ path: fileURLToPath(new URL('readme.png', import.meta.url)) });
});
