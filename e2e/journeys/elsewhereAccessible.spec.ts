import { startTeamServer } from '../../tests/team/teamServer';
import { Access } from '../src/Access';
import { expect, test } from '../src/fixtures';
import { Home } from '../src/Home';
import { openSample } from '../src/openSample';
import { Screen } from '../src/Screen';
import { walkWhatCame } from '../src/walks/cameWalk';
import { type CrewLanguage, walkCrew } from '../src/walks/crewWalk';
import { walkGrids, walkHandOff } from '../src/walks/handOffWalk';
import { walkTeam } from '../src/walks/teamWalk';
import { walkVersions } from '../src/walks/versionsWalk';

/** A site that lies on the earth. */
const TERRACE = new URL('../../packages/site/samples/front-terrace.json', import.meta.url).pathname;

test.describe.configure({ timeout: 240_000 });

for (const language of ['English', 'Español'] satisfies CrewLanguage[])
  test(`every screen of the crew view, ${language}`, async ({ page, hand }) => {
    const access = new Access(page);
    const screen = await openSample(page, hand);
    await screen.saved();
    await hand.press(page.getByRole('button', { name: 'All sites' }));
    await walkCrew(page, hand, 'Rear-alley lateral', language, (at) => access.look(at));
    access.clear();
  });

test('what is handed off and what comes in: sheets, link and code, files, a crew’s answer', async ({
  page,
  hand,
}) => {
  const access = new Access(page);
  await walkHandOff(await openSample(page, hand), (at) => access.look(at));
  access.clear();
});

test('the coordinates that files are in', async ({ page, hand }) => {
  const access = new Access(page);
  const home = new Home(page, hand);
  await home.open();
  await home.openFile(TERRACE);
  await walkGrids(new Screen(page, hand), (at) => access.look(at));
  access.clear();
});

test('what a link brings, in both languages', async ({ page, hand }) => {
  const access = new Access(page);
  await walkWhatCame(await openSample(page, hand), ['English', 'Español'], (at) => access.look(at));
  access.clear();
});

test('a site as it was before', async ({ page, hand }) => {
  const access = new Access(page);
  await walkVersions(page, hand, (at) => access.look(at));
  access.clear();
});

test('joining a team, and being in one', async ({ page, hand, neighbours }) => {
  const server = await startTeamServer();
  neighbours.add(new URL(server.url).origin);
  try {
    const access = new Access(page);
    const home = new Home(page, hand);
    await home.open();
    await home.press('Open the sample site');
    await hand.press(page.getByRole('button', { name: 'All sites' }));
    await expect(home.sites).toHaveCount(1);
    await walkTeam(page, hand, server, (at) => access.look(at));
    access.clear();
  } finally {
    await server.close();
  }
});
