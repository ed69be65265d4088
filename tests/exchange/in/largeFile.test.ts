import { incomingSite, placeIncoming, readIncoming } from '@footmark/exchange';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../random/seeded';
import { frontTerrace } from '../rearAlley';
import { readSound } from './reading';

const TEN_MB = 10_000_000;

/** Small outlines about the sample site, as many as make ten megabytes. */
function tenMegabytes(): string {
  const next = seededRandom(5);
  const features: string[] = [];
  for (let size = 0; size < TEN_MB; ) {
    const [x, y] = [-31.2086 + 0.001 * next(), 45.604 + 0.001 * next()];
    const ring = Array.from({ length: 12 }, (_, i) => [
      Number((x + 1e-5 * Math.cos(i / 2)).toFixed(7)),
      Number((y + 1e-5 * Math.sin(i / 2)).toFixed(7)),
    ]);
    const geometry = { type: 'Polygon', coordinates: [[...ring, ring[0]]] };
    features.push(
      JSON.stringify({ type: 'Feature', properties: { name: `a ${features.length}` }, geometry }),
    );
    size += features.at(-1)?.length ?? 0;
  }
  return `{"type":"FeatureCollection","features":[${features.join(',')}]}`;
}

describe('a GeoJSON file of 10 MB', () => {
  it('is read in steps that tell how far it is, and placed', { timeout: 60_000 }, () => {
    const steps = readIncoming(tenMegabytes());
    const shares: number[] = [];
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) shares.push(step.value);
    if (!step.value.ok) return expect.fail(step.value.code);
    expect(shares.length).toBeGreaterThan(8);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.every((s) => s >= 0 && s <= 1)).toBe(true);
    const placed = placeIncoming(step.value.value, {}, incomingSite(frontTerrace().derived));
    if (!placed.ok) return expect.fail(placed.code);
    expect(placed.value.counts.area).toBeGreaterThan(20_000);
    expect(placed.value.things.length).toBe(placed.value.counts.area);
    expect(placed.value.canBeTaken).toBe(true);
  });
});

describe('a worker', () => {
  it('can be handed what was read and what was answered, and hand back what was placed', () => {
    const site = incomingSite(frontTerrace().derived);
    const incoming = readSound('{"type":"Point","coordinates":[-31.2086,45.604]}');
    const answers = { coordinates: { is: 'earth' } } as const;
    const sent = structuredClone({ incoming, answers, site });
    const here = placeIncoming(incoming, answers, site);
    expect(structuredClone(placeIncoming(sent.incoming, sent.answers, sent.site))).toEqual(here);
  });
});
