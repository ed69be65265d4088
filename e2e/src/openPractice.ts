import { expect } from '@playwright/test';
import { writeSite } from '../../packages/site/src/index';
import { practiceYard } from '../fixtures/practiceYard';
import { downloadSite } from './HandOff';
import type { Home } from './Home';
import type { Plan } from './Plan';
import type { Screen } from './Screen';
import { placeOf } from './siteFile';
import { Yard } from './Yard';

/** A plan wider than this (CSS px) is a desk's or a tablet's. */
const WIDE_PX = 600;

/** Shares of the view's width and height where the fitted practice yard has bare ground and no line pulls, far apart. */
const BARE = {
  wide: [
    { across: 0.38, down: 0.72 },
    { across: 0.56, down: 0.3 },
  ],
  narrow: [
    { across: 0.396, down: 0.69 },
    { across: 0.567, down: 0.367 },
  ],
} as const;

/** Opens the practice yard, whole in the view. */
export async function openPractice(home: Home): Promise<void> {
  await home.open();
  await home.openFile({
    name: 'practice.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeSite(practiceYard())),
  });
  await expect(home.page.getByRole('main', { name: 'Plan' })).toBeVisible();
}

/** Learns the scale of the view as it is now, by two points that are tapped in and taken back. */
export async function learnScale(screen: Screen, plan: Plan): Promise<void> {
  const yard = new Yard(screen);
  const spots = [];
  const { width } = await plan.box();
  for (const { across, down } of BARE[width > WIDE_PX ? 'wide' : 'narrow']) {
    await screen.goTo('Yard');
    const spot = await plan.share(across, down);
    await yard.draw('Reference point');
    await plan.tapScreen(spot);
    await expect(screen.field('Name')).toBeVisible();
    await yard.back();
    spots.push(spot);
  }
  const { site } = await downloadSite(screen);
  const [a, b] = spots as [(typeof spots)[0], (typeof spots)[0]]; // two were tapped
  plan.learn(
    { screen: a, plan: placeOf(site, 'Reference point') },
    { screen: b, plan: placeOf(site, 'Reference point 2') },
  );
  await screen.undo();
  await screen.undo();
  await screen.goTo('Yard');
}
