import { readFileSync } from 'node:fs';
import { changesBetween, type MergedSite, mergeSites, valueAt, withVersion } from '@footmark/merge';
import { openSite, openSiteValue, type Site, sameValue } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dice } from '../random/dice';
import { randomChange } from './randomChange';

const RUNS = 60;
const PATIENCE_MS = 120_000;

function sample(name: string): Site {
  const opened = openSite(
    readFileSync(new URL(`../../packages/site/samples/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(`the sample ${name} does not open`);
  return opened.site;
}

const samples = [sample('rear-alley'), sample('front-terrace')];

function grown(from: Site, seed: number, who: string, edits: number): Site {
  const hand = dice(seed, who);
  let site = from;
  for (let n = 0; n < edits; n++) site = randomChange(site, hand);
  return site;
}

const twoSides = fc
  .record({
    sample: fc.integer({ min: 0, max: samples.length - 1 }),
    seed: fc.integer(),
    before: fc.integer({ min: 0, max: 8 }),
    mine: fc.integer({ min: 0, max: 12 }),
    theirs: fc.integer({ min: 0, max: 12 }),
  })
  .map((drawn) => {
    const start = samples[drawn.sample];
    if (start === undefined) throw new RangeError('no such sample');
    const base = grown(start, drawn.seed, 'b', drawn.before);
    return {
      base,
      mine: grown(base, drawn.seed + 1, 'm', drawn.mine),
      theirs: grown(base, drawn.seed + 2, 't', drawn.theirs),
    };
  });

const check = (property: (sides: { base: Site; mine: Site; theirs: Site }) => void) =>
  fc.assert(fc.property(twoSides, property), { numRuns: RUNS, seed: 20_261_112 });

/** Whether a value is in the merged site or waits beside it. */
function isKept({ site, others }: MergedSite, place: readonly string[], value: unknown): boolean {
  const wanted = value ?? null;
  return (
    sameValue(valueAt(site, place) ?? null, wanted) ||
    sameValue(valueAt(withVersion(site, place, wanted), place), valueAt(site, place)) ||
    others.some((o) => sameValue(o.place, place) && sameValue(o.other, wanted))
  );
}

describe('merging sites that grew apart by random edits', () => {
  it(
    'gives a site that opens like a file',
    () =>
      check(({ base, mine, theirs }) => {
        for (const from of [base, null]) {
          expect(openSiteValue(mergeSites(from, mine, theirs).site)).toMatchObject({ ok: true });
        }
      }),
    PATIENCE_MS,
  );

  it(
    'keeps every change of either side, in the site or beside it',
    () =>
      check(({ base, mine, theirs }) => {
        const made = mergeSites(base, mine, theirs);
        for (const side of [mine, theirs]) {
          for (const { place, after } of changesBetween(base, side)) {
            // readings of a run that came back whole, or waits whole, are in it
            const run = place[2] === 'readings' ? place.slice(0, 2) : place;
            const whole = valueAt(side, run);
            const kept =
              isKept(made, place, after) ||
              made.others.some((o) => sameValue(o.place, run) && sameValue(o.other, whole ?? null));
            expect(kept, JSON.stringify([place, after])).toBe(true);
          }
        }
      }),
    PATIENCE_MS,
  );

  it(
    'leaves alone what only one side knows of, and takes from the other what only it changed',
    () =>
      check(({ base, mine, theirs }) => {
        expect(mergeSites(base, mine, base)).toEqual({ site: mine, others: [] });
        const taken = mergeSites(base, base, theirs);
        expect(changesBetween(taken.site, theirs)).toEqual([]);
        expect(taken.others).toEqual([]);
        expect(mergeSites(base, mine, mine)).toEqual({ site: mine, others: [] });
      }),
    PATIENCE_MS,
  );

  it(
    'comes to rest: merging the outcome again changes nothing',
    () =>
      check(({ base, mine, theirs }) => {
        const { site } = mergeSites(base, mine, theirs);
        expect(mergeSites(theirs, site, theirs)).toEqual({ site, others: [] });
        expect(changesBetween(mergeSites(mine, mine, site).site, site)).toEqual([]);
      }),
    PATIENCE_MS,
  );
});
