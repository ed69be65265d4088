// Run: npx tsx e2e/bench/team.bench.ts, on a built app (pnpm build).
// A truck's first day: 1,000 sites of 50 kB come from a server of CouchDB's protocol on the loopback while somebody types and clicks: how long an input
// waits until the page turns to it. Beside it in the same run: the server gives the same documents to nobody who does anything with them.
import type { BrowserContext, Page } from '@playwright/test';
import { stampSite } from '../../packages/merge/src/index';
import { documentOf } from '../../packages/team/src/index';
import { quantile, tell } from '../../tests/bench/figures';
import { startTeamServer, type TeamServer } from '../../tests/team/teamServer';
import { onBuiltApp } from './onBuiltApp';
import { siteOfSize } from './siteOfSize';

const SHARED = 1000;
const SITE_BYTES = 50_000;
const INPUT_MS = 50;
const PATIENCE_MS = 900_000;
/** Documents that the server takes or gives at once. */
const LOT = 50;

const server = await startTeamServer();
await fill(server);
const bare = await bareSeconds(server);
await onBuiltApp(async ({ app, context }) => {
  const page = await watchedPage(context);
  await page.goto(app.origin);
  await joinTeam(page, server);
  const { seconds, waits, tasks } = await typeWhileTheyCome(page);
  const worst = Math.max(...waits);
  console.log(
    `${waits.length} inputs: median ${quantile(waits, 0.5).toFixed(1)} ms; longest task of the page ${Math.max(0, ...tasks).toFixed(0)} ms`,
  );
  tell({
    name: `${SHARED.toLocaleString('en-US')} sites of 50 kB come in from a team's database`,
    value: seconds,
    unit: 's',
    ratio: { to: 'the server giving them away', times: seconds / bare },
  });
  return tell({
    name: 'while they come, the longest wait of an input',
    value: worst,
    unit: 'ms',
    goal: { under: INPUT_MS },
    ratio: { to: 'the median wait', times: worst / quantile(waits, 0.5) },
  });
});
await server.close();
process.exit();

async function fill({ database }: TeamServer): Promise<void> {
  const site = siteOfSize(SITE_BYTES);
  for (let from = 0; from < SHARED; from += LOT)
    await database.bulkDocs(
      Array.from({ length: LOT }, (_, k) => {
        const own = { ...site, id: `shared-${from + k}`, name: `Shared ${from + k}` };
        return documentOf(stampSite(null, { site: own, others: [], binnedAt: null }, { by: 'office' }));
      }),
    );
}

async function bareSeconds({ url, user, password }: TeamServer): Promise<number> {
  const authorization = `Basic ${Buffer.from(`${user}:${password}`, 'utf8').toString('base64')}`;
  const began = performance.now();
  for (let from = 0; from < SHARED; from += LOT) {
    const asked = `${url}/_all_docs?include_docs=true&skip=${from}&limit=${LOT}`;
    const answer = await fetch(asked, { headers: { authorization } });
    if (!answer.ok) throw new Error(`the server says ${answer.status}`);
    await answer.json();
  }
  return (performance.now() - began) / 1000;
}

/** A page that notes how long inputs wait and which tasks are long. */
async function watchedPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.addInitScript(() => {
    const [waits, tasks] = [[] as number[], [] as number[]];
    Object.assign(window, { waits, tasks });
    for (const type of ['pointerdown', 'keydown'])
      window.addEventListener(type, (event) => waits.push(performance.now() - event.timeStamp), true);
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask' });
  });
  return page;
}

async function joinTeam(page: Page, { url, user, password }: TeamServer): Promise<void> {
  await page.getByRole('button', { name: /^Team: / }).click();
  await page.getByRole('textbox', { name: 'Address of the team’s database' }).fill(url);
  await page.getByRole('textbox', { name: 'User name' }).fill(user);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Join the team' }).click();
  await page.getByText('Every site of this device goes to the team').waitFor();
}

async function typeWhileTheyCome(page: Page) {
  await page.evaluate(() => {
    for (const list of ['waits', 'tasks']) Reflect.get(window, list).splice(0);
  });
  const from = performance.now();
  const search = page.getByRole('searchbox');
  let there = 0;
  for (let n = 0; there < SHARED; n++) {
    if (performance.now() - from > PATIENCE_MS) throw new Error(`only ${there} sites have come`);
    await search.click();
    await page.keyboard.press(n % 8 < 4 ? 'a' : 'Backspace');
    await page.waitForTimeout(100);
    if (n % 10 === 0) there = await countShared(page);
  }
  const seconds = (performance.now() - from) / 1000;
  const listOf = async (name: string): Promise<readonly number[]> =>
    await page.evaluate((list) => Reflect.get(window, list), name);
  return { seconds, waits: await listOf('waits'), tasks: await listOf('tasks') };
}

async function countShared(page: Page): Promise<number> {
  return await page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open('footmark');
        opening.onsuccess = () => {
          const asked = opening.result
            .transaction('entries')
            .objectStore('entries')
            .count(IDBKeyRange.bound('shared-', 'shared-~'));
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
  );
}
