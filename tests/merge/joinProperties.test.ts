import { readFileSync } from 'node:fs';
import { join, type SiteState, type StampedSite, sameStamped, stampSite, viewSite } from '@footmark/merge';
import { openSite, openSiteValue, sameValue } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dice } from '../random/dice';
import { randomChange } from './randomChange';

/*
 * What a join must be so that all ends come to the same whatever way states take: commutative, associative and idempotent (a join of a
 * semilattice: M. Shapiro et al., 'Conflict-free Replicated Data Types', 2011; from memory).
 */
const PATIENCE_MS = 120_000;

const opened = openSite(
  readFileSync(new URL('../../packages/site/samples/rear-alley.json', import.meta.url), 'utf8'),
);
if (!opened.ok) throw new Error('the sample does not open');
const start = stampSite(null, { site: opened.site, others: [], binnedAt: null }, { by: 'start' });

function shown(stamped: StampedSite): SiteState {
  const view = viewSite(stamped);
  if (view === null) throw new Error('nothing can be shown');
  return { site: view.site, others: view.others, binnedAt: view.binnedAt };
}

/** Three devices that edit, choose, put into the bin, and hear of one another by chance: their last states, and all that were on the way. */
function grown(seed: number, steps: number): { ends: readonly StampedSite[]; all: readonly StampedSite[] } {
  const hand = dice(seed, 'g');
  const ends = [start, start, start];
  const all: StampedSite[] = [start];
  for (let n = 0; n < steps; n++) {
    const at = hand.pick([0, 1, 2]);
    const mine = ends[at] ?? start;
    if (hand.next() < 0.35) ends[at] = join(mine, hand.pick(all));
    else {
      const state = shown(mine);
      const drop = state.others.length > 0 && hand.next() < 0.5 ? hand.pick(state.others) : null;
      ends[at] = stampSite(
        mine,
        {
          site: randomChange(state.site, dice(seed * 97 + n, `${n}`)),
          others: state.others.filter((other) => other !== drop),
          binnedAt: hand.next() < 0.05 ? n : state.binnedAt,
        },
        { by: `d${at}` },
      );
    }
    all.push(ends[at] ?? start);
  }
  return { ends, all };
}

const histories = fc
  .record({ seed: fc.integer({ min: 0, max: 1_000_000 }), steps: fc.integer({ min: 3, max: 24 }) })
  .map(({ seed, steps }) => grown(seed, steps));

const check = (property: (history: ReturnType<typeof grown>) => void) =>
  fc.assert(fc.property(histories, property), { numRuns: 60, seed: 20_261_126 });

const together = (states: readonly StampedSite[]) => states.reduce((a, b) => join(a, b));

describe('states of a site that three devices joined by chance', () => {
  it(
    'come to the same in whatever order and however often they are joined',
    () =>
      check(({ ends: [a = start, b = start, c = start], all }) => {
        const made = together([a, b, c]);
        for (const other of [
          together([c, b, a]),
          join(a, join(b, c)),
          join(made, made),
          together([...all, a, b, c, ...all.toReversed()]),
        ])
          expect(sameStamped(other, made)).toBe(true);
      }),
    PATIENCE_MS,
  );

  it(
    'show a site that opens like a file, and what is as it was shown is not stamped again',
    () =>
      check(({ ends }) => {
        const made = together(ends);
        const state = shown(made);
        expect(openSiteValue(JSON.parse(JSON.stringify(state.site)))).toMatchObject({ ok: true });
        expect(stampSite(made, state, { by: 'reader' })).toBe(made);
        const like = viewSite(made, state.site);
        expect(like?.site).toBe(state.site);
        expect(sameValue(like?.others, state.others)).toBe(true);
      }),
    PATIENCE_MS,
  );

  it(
    'show what a device put in last when it has heard of all others',
    () =>
      check(({ ends }) => {
        const made = together(ends);
        const { site, binnedAt } = shown(made);
        const edited = randomChange(site, dice(5, 'last'));
        const after = shown(stampSite(made, { site: edited, others: [], binnedAt }, { by: 'last' }));
        expect(sameValue(after.site, edited)).toBe(true);
        expect(after.others).toEqual([]);
      }),
    PATIENCE_MS,
  );
});
