import { readFile } from 'node:fs/promises';
import { readCsv } from '../src/csv';
import { expect, test } from '../src/fixtures';
import { openFiles, saveAs } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';
import { Screen } from '../src/Screen';
import { textOf } from '../src/siteFile';

const UTM_25N = 'UTM zone 25N, WGS 84, metres, EPSG 32625';
const TERRACE = new URL('../../packages/site/samples/front-terrace.json', import.meta.url).pathname;

test('a site that lies nowhere on the earth is handed out in its own coordinates, and says what maps need', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await openFiles(screen);
  await keepPicture(page, 'files');
  await expect(screen.card).toContainText('Needs a point of known latitude and longitude.');
  await expect(screen.button('Save: Map layer (GeoJSON)')).toHaveCount(0);

  const dxf = await textOf(await saveAs(screen, 'Drawing for CAD (DXF)'));
  expect(dxf).toContain('AC1009');
  const points = await textOf(await saveAs(screen, 'Points for a surveyor (PNEZD)'));
  expect(points.split('\r\n')[0]).toContain('P,N,E,Z,D');
  const download = await saveAs(screen, 'Picture of the plan (PNG)');
  const png = await readFile(await download.path());
  // the signature and the width of the header chunk: ISO/IEC 15948
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(Math.max(png.readUInt32BE(16), png.readUInt32BE(20))).toBe(2800);
});

test('a site on the earth is handed out in UTM, with its convergence and what must be known beside it', async ({
  page,
  hand,
}) => {
  const home = new Home(page, hand);
  await home.open();
  await home.openFile(TERRACE);
  const screen = new Screen(page, hand);
  await openFiles(screen);
  await screen.choose('Coordinates in files', UTM_25N);
  await expect(screen.card).toContainText('Convergence');
  await expect(screen.card).toContainText('Grid scale factor');
  await keepPicture(page, 'files-utm');
  const [row] = readCsv(await textOf(await saveAs(screen, 'Marks as a table (CSV)')));
  // 31.2° W is 1.8° east of the middle of zone 25 (33° W): about 140 km east of 500 km, at 45.6° north
  expect(Number(row?.easting_m)).toBeGreaterThan(639_000);
  expect(Number(row?.easting_m)).toBeLessThan(641_000);
  expect(Number(row?.latitude)).toBeCloseTo(45.604, 2);
  const map = JSON.parse(await textOf(await saveAs(screen, 'Map layer (GeoJSON)')));
  expect(map.type).toBe('FeatureCollection');
  await page.reload();
  await openFiles(screen);
  await expect(screen.card).toContainText('Convergence');

  await screen.choose('Coordinates in files', 'Another system, typed');
  await screen.fill('Its definition (PROJ string or WKT)', '+proj=nowhere');
  await screen.press('Use this system');
  await expect(screen.card.getByRole('alert')).toBeVisible();
  await screen.fill(
    'Its definition (PROJ string or WKT)',
    '+proj=tmerc +lat_0=45 +lon_0=-31 +k=1 +datum=WGS84 +units=m',
  );
  await screen.press('Use this system');
  await expect(screen.card).toContainText('Convergence');
});
