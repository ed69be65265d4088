import { readFile } from 'node:fs/promises';
import { expect, test } from '../src/fixtures';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';

test('the sheet is looked at as it is printed, and saved as a PDF', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Hand-off');
  await keepPicture(page, 'hand-off');
  await screen.press('Look at the sheet');
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('img', { name: /^Sheet 1 of/ })).toBeVisible({ timeout: 20_000 });
  await keepPicture(page, 'sheet');
  // the same layout as the PDF: its texts are texts
  await expect(dialog.getByText('Rear-alley lateral').first()).toBeVisible();
  // pages below the first come by keys, too
  const pages = dialog.getByRole('region', { name: 'Pages' });
  await pages.focus();
  await page.keyboard.press('End');
  await expect.poll(() => pages.evaluate((box) => box.scrollTop)).toBeGreaterThan(0);
  const coming = page.waitForEvent('download');
  await hand.press(dialog.getByRole('button', { name: 'Save as PDF' }));
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/\.mark-out\.pdf$/);
  const pdf = await readFile(await download.path());
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.length).toBeGreaterThan(20_000);
  await hand.press(dialog.getByRole('button', { name: 'Close' }));
  await expect(dialog).toHaveCount(0);
});

test('paper, scale and ink are chosen, and every kind has its sheet', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Hand-off');
  await hand.press(screen.card.getByRole('button', { name: /^Paper, scale, language/ }));
  await screen.choose('Paper', 'Tabloid');
  await screen.choose('Scale', '1 in = 10 ft');
  await screen.pick(/^Ink/, 'Black and white');
  for (const kind of ['New pipe', 'As built', 'Findings for the owner']) {
    await screen.choose('What it is for', kind);
    await screen.press('Look at the sheet');
    const dialog = page.getByRole('dialog');
    const first = dialog.getByRole('img', { name: /^Sheet 1 of/ });
    await expect(first).toBeVisible({ timeout: 20_000 });
    // 11 × 17 in is 279.4 × 431.8 mm (ASME Y14.1, from memory)
    await expect(first).toHaveAttribute('width', /^279\.4/);
    await hand.press(dialog.getByRole('button', { name: 'Close' }));
  }
});
