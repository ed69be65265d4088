// Run: npx tsx tests/bench/link.bench.ts
// The sample sites as links: how many bytes, by what goes along, against JSON deflated by zlib at its best; and how long it takes.
import { deflateRawSync } from 'node:zlib';
import { forLink, type LinkChoice, leastChoice, linkBytes, openLinkBytes, qrSymbols } from '@footmark/link';
import { loadProjection, type Site } from '@footmark/site';
import { asDrawn, bytesOf, fullSite, sampleSite } from '../link/samples';
import { seededRandom } from '../random/seeded';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

/** An address of forty characters. */
const HEAD = 'https://footmark.example/app-2026/#/link';
const RUNS = 15;
const WARM_UP = 5;
/** Bytes that one symbol of version 25 carries beside such an address at level L. */
const MOST_BYTES = 1227;
/** Milliseconds to make or to open a link: nobody waits. */
const TARGET_MS = 100;

const everything: LinkChoice = { address: true, notes: true, coordinates: true };

/** Vertices, stretches, readings: what stands in the site's lists, without the lists of marks that follow from it. */
function thingsIn(site: Site): number {
  const owners = [...site.features, ...site.paths];
  const points = owners.reduce((sum, owner) => sum + owner.vertices.length, 0);
  return owners.length + points + site.runs.reduce((sum, run) => sum + 1 + run.readings.length, 0);
}

const medianOf = (once: () => unknown) =>
  quantile(
    timesOf(RUNS, WARM_UP, () => (once() === null ? 1 : 0)),
    0.5,
  );

await loadProjection();
const rearAlley = sampleSite('rear-alley');
const frontTerrace = sampleSite('front-terrace');
const sites: readonly (readonly [string, Site])[] = [
  ['rear-alley', rearAlley],
  ['front-terrace', frontTerrace],
  ['rear-alley as if drawn in the app', asDrawn(rearAlley, seededRandom(1))],
  ['front-terrace as if drawn in the app', asDrawn(frontTerrace, seededRandom(1))],
  ['a site of everything', fullSite()],
];

let met = true;
for (const [name, site] of sites) {
  for (const [what, choice] of [['least', leastChoice] as const, ['all', everything] as const]) {
    const bytes = bytesOf(linkBytes(site, choice));
    const json = deflateRawSync(JSON.stringify(forLink(site, choice)), { level: 9 }).length;
    const drawn = qrSymbols(HEAD, bytes);
    const symbols = drawn.ok ? drawn.symbols.map((s) => `${s.version}-${s.level}`).join(' and ') : 'a file';
    const each = (bytes.length / thingsIn(site)).toFixed(1);
    console.log(
      `${name}, ${what}: ${bytes.length} bytes (${each} for each of ${thingsIn(site)} things, points and readings), ` +
        `deflated JSON ${json} (${(json / bytes.length).toFixed(1)} times that), QR ${symbols}`,
    );
    if (what === 'least' && (site === rearAlley || site === frontTerrace))
      met =
        tell({
          name: `${name} as a link`,
          value: bytes.length,
          unit: 'bytes',
          goal: { under: MOST_BYTES + 1 },
          ratio: { to: 'its JSON, deflated', times: bytes.length / json },
        }) && met;
  }
}

const bytes = bytesOf(linkBytes(rearAlley, leastChoice));
const made = medianOf(() => linkBytes(rearAlley, leastChoice));
const opened = medianOf(() => openLinkBytes(bytes));
const drawn = medianOf(() => qrSymbols(HEAD, bytes));
const text = JSON.stringify(rearAlley);
const parsed = medianOf(() => JSON.parse(text));
for (const [what, ms] of [['made', made] as const, ['opened', opened] as const])
  met =
    tell({
      name: `a link of the sample site is ${what}`,
      value: ms,
      unit: 'ms',
      goal: { under: TARGET_MS },
      ratio: { to: 'JSON.parse of the site', times: ms / parsed },
    }) && met;
console.log(`its symbol is drawn in ${drawn.toFixed(0)} ms median, ${ranOn()}`);
process.exitCode = met ? 0 : 1;
