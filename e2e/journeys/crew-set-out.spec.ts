import { readFile } from 'node:fs/promises';
import { Crew } from '../src/Crew';
import { expect, test } from '../src/fixtures';
import { keepPicture } from '../src/keepPicture';
import { faintTexts, smallTargets } from '../src/readable';

const FOOT_M = 0.3048;

/** A degree of latitude at 45° N on WGS 84 is 111,131.7 m: from memory of the published tables, to the metre. */
const DEGREE_M = 111_131.7;
const HERE = { latitudeDeg: 45, longitudeDeg: -93 };

/** A point of the plan in feet, as a file has it. */
const spot = (east: number, north: number) => ({ by: 'coordinates', x: east * FOOT_M, y: north * FOOT_M });
const thing = (id: string, kind: string, name: string, east: number, north: number, fields = {}) => ({
  id,
  kind,
  name,
  vertices: [{ id: 'a', spot: spot(east, north) }],
  fields,
});

/** Posts about the bend of a new pipe at (20, 40): 15 ft (9-12-15) and 20 ft (12-16-20) square to it, and 13 ft (5-12-13) to check. */
const site = {
  format: 'footmark-site',
  version: 3,
  id: 'newline',
  name: 'New line',
  address: '',
  note: '',
  createdAt: '2026-05-20T12:00:00Z',
  units: { length: 'ft-in', diameter: 'in', direction: 'bearing' },
  frame: {
    north: { by: 'typed', azimuth: 0 },
    control: [{ id: 'c1', point: { of: 'f3', at: 'a' }, ...HERE, accuracy: 1, source: 'typed' }],
  },
  tape: { length: 100 * FOOT_M, sigma: 0.02 },
  entryReach: 1,
  sigmas: {},
  underlays: [],
  features: [
    thing('f1', 'reference-point', 'Gate post', 29, 52),
    thing('f2', 'reference-point', 'Pole', 36, 28),
    thing('f3', 'reference-point', 'Corner stone', 15, 28),
    {
      ...thing('f4', 'service', 'Old gas line', 0, 0, { carries: 'gas', depth: 2 * FOOT_M }),
      vertices: [
        { id: 'a', spot: spot(0, 39) },
        { id: 'b', spot: spot(60, 39) },
      ],
    },
  ],
  paths: [
    {
      id: 'p1',
      name: 'New line',
      state: 'proposed',
      vertices: [
        { id: 'a', spot: spot(20, 0), level: { is: 'depth-to-invert', depth: 4 * FOOT_M } },
        { id: 'b', spot: spot(20, 40), bend: Math.PI / 4 },
        { id: 'c', spot: spot(50, 70), level: { is: 'depth-to-invert', depth: 5 * FOOT_M } },
      ],
      bendRadius: 9 * 0.0254,
      stretches: [{ from: 0, material: 'plastic', diameter: 4 * 0.0254, slope: 0.02 }],
    },
  ],
  visits: [],
  runs: [],
  pairs: [],
  different: [],
  rules: { set: 'us-ipc', changed: [] },
  digging: { soil: 'not-chosen', disturbed: true, protection: 'slope', digs: [], notes: [] },
  asFound: [],
  setAside: [],
};

test('a crew sets a new pipe out, knows where it stands, and tapes what it laid', async ({
  page,
  hand,
  context,
}) => {
  await context.grantPermissions(['geolocation']);
  // 100 ft south of the corner stone
  await context.setGeolocation({
    latitude: HERE.latitudeDeg - (100 * FOOT_M) / DEGREE_M,
    longitude: HERE.longitudeDeg,
    accuracy: 3,
  });
  const crew = new Crew(page, hand);
  const file = {
    name: 'new-line.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(site)),
  };
  await crew.take(file, 'New line');
  const bend = page.getByRole('main', { name: 'NL-3', exact: true });

  await test.step('the bend has its fitting, its tapes and what not to hit', async () => {
    await crew.goTo('NL-3');
    await expect(bend).toContainText('1/8 bend, 45° right');
    await expect(bend).toContainText('15′ 0″from Gate post');
    await expect(bend).toContainText('20′ 0″from Pole');
    await expect(bend).toContainText('13′ 0″from Corner stone');
    await expect(bend).toContainText('Depth to invert');
    await expect(bend).toContainText('Old gas line: in the hole, its top about 2′ 0″ deep. Dig by hand.');
    expect((await faintTexts(page, 7)).faint).toEqual([]);
    expect(await smallTargets(page, 56)).toEqual([]);
    await keepPicture(page, 'crew-set-out');
  });

  await test.step('where it stands, and which way the paint is', async () => {
    await crew.press('Where am I');
    // the bend is 112 ft north and 5 ft east of there: √(112² + 5²) = 112.1 ft, told to the inch; 3 m give or take
    await expect(page.getByText(/^NL-3 is 112′ [012]″ to the north of you, ± 9′ 10″\.$/u)).toBeVisible();
    await keepPicture(page, 'crew-here');
  });

  await test.step('what it laid is taped from the same two points', async () => {
    await crew.press('What we found');
    await hand.mark(page.getByRole('radio', { name: 'By two tapes' }));
    const field = (name: string) => page.getByRole('textbox', { name: `from ${name}` });
    await hand.write(field('Gate post'), "3'");
    await page.keyboard.press('Enter');
    await hand.write(field('Pole'), "4'");
    await page.keyboard.press('Enter');
    await expect(page.getByRole('alert')).toContainText('do not meet');
    // 1 ft to the east of the bend, at (21, 40): √(8² + 12²) and √(15² + 12²) ft
    await hand.write(field('Gate post'), `${Math.sqrt(208)} ft`);
    await page.keyboard.press('Enter');
    await hand.write(field('Pole'), `${Math.sqrt(369)} ft`);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('alert')).toHaveCount(0);
    await crew.press('Done');
    expect(await crew.isTicked('Found')).toBe('true');
  });

  await test.step('something else that lies there is put down beside it', async () => {
    await crew.press('Change what we found');
    await crew.press('Something else near it');
    await crew.step('Against the flow 1′', 2);
    await crew.step('Right 1″', 3);
    await hand.write(page.getByRole('textbox', { name: 'Note' }), 'Old steel line, not on the plan');
    await crew.press('Done');
    await expect(crew.button('Found, 2′ 0″ against the flow, 3″ to the right.')).toBeVisible();
    await crew.press('Done');
  });

  const answer = await test.step('and goes back to the office', async () => {
    await crew.press('Send back');
    const coming = page.waitForEvent('download');
    await hand.press(page.getByRole('dialog').getByRole('button', { name: 'Send as a file' }));
    return JSON.parse(await readFile(await (await coming).path(), 'utf8'));
  });

  await test.step('as tapes on the side of the bend, from what is on the plan', () => {
    const [found] = answer.found;
    expect(found).toMatchObject({
      about: { is: 'set-out', path: 'p1', number: 3 },
      state: 'found',
      given: { label: 'NL-3', at: { x: expect.closeTo(20 * FOOT_M, 9), y: expect.closeTo(40 * FOOT_M, 9) } },
      where: { by: 'tapes', tapes: [{ from: { of: 'f1', at: 'a' } }, { from: { of: 'f2', at: 'a' } }] },
    });
    // seen from the post at (29, 52) to the pole at (36, 28), (21, 40) is on the right: its cross product is negative
    expect((36 - 29) * (40 - 52) - (28 - 52) * (21 - 29)).toBeLessThan(0);
    expect(found.where.side).toBe('right');
    expect(answer.found[1]).toMatchObject({
      about: { is: 'place' },
      given: { label: 'NL-3' },
      where: { by: 'paint', along: expect.closeTo(-2 * FOOT_M, 9), right: expect.closeTo(0.25 * FOOT_M, 9) },
      note: 'Old steel line, not on the plan',
    });
  });
});
