import type { Page } from '@playwright/test';
import { type Site, writeSite } from '../../packages/site/src/index';
import { IN_THE_MIDDLE } from './crowdedSite';

/** A place on the screen in CSS pixels. */
export type Spot = { readonly x: number; readonly y: number };

/** Opens a crowded yard from a file, until its list is there. */
export async function openFile(page: Page, origin: string, site: Site): Promise<void> {
  await page.goto(origin);
  const dialog = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a site file', exact: true }).click();
  await (await dialog).setFiles({
    name: 'crowded.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeSite(site)),
  });
  await page.getByRole('main', { name: 'Plan' }).waitFor();
  await page.getByRole('button', { name: new RegExp(`^${IN_THE_MIDDLE}`) }).waitFor({ timeout: 60_000 });
}

export async function middleOf(page: Page): Promise<Spot> {
  const box = await page.getByRole('main', { name: 'Plan' }).boundingBox();
  if (box === null) throw new Error('there is no plan on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Chooses what stands in the middle by a press on it. */
export async function grasp(page: Page, at: Spot): Promise<void> {
  await page.mouse.click(at.x, at.y);
  await page.getByRole('region', { name: IN_THE_MIDDLE, exact: true }).waitFor();
}
