import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Site } from '../document/site';
import { seeded } from '../testing/dice';
import { pipe, push, ref, thing, typed, yard } from '../testing/yard';
import { evidence } from './evidence/evidence';
import { guesses } from './guesses/guesses';
import { locatedAsDrawn, lookedAsDrawn } from './located';
import { netOf } from './net';
import { observationName } from './observationTag';
import { alongOf, netReading } from './readingPlace';

// The derivatives of every observation of the fit against central differences of its own value: independent of how they were derived.

const STEP = 1e-6;

/** A lateral with two bends and a drop, a branch into it, a run down the branch and the main, one up it, and evidence of all kinds. */
function site(): Site {
  return yard({
    features: [
      thing('stack', 'stack', [typed(-6, 9)]),
      thing('co', 'cleanout', [typed(0, 0)]),
      thing('tap', 'tap', [typed(26, -5)]),
      thing('la', 'locate', [typed(4, 0.4)], {
        reading: { run: 'down', reading: 'r2' },
        method: 'crossed',
        depth: 1.2,
      }),
      thing('lb', 'locate', [typed(9.5, 1.7)], { reading: { run: 'down', reading: 'r3' }, method: 'peak' }),
      thing('ld', 'locate', [typed(12.5, 0.4)], { reading: { run: 'from-bend', reading: 'r9' } }),
      thing('lc', 'locate', [typed(20, -1.8)], { reading: { run: 'up', reading: 'r5' }, sigma: 0.1 }),
    ],
    paths: [
      pipe(
        'main',
        [
          { spot: { by: 'at', point: ref('co') } },
          { spot: { by: 'finger', x: 7, y: 1 }, bendRadius: 0.3 },
          { spot: { by: 'finger', x: 15, y: 0 }, bendRadius: 0.3, drop: 0.5, bend: 0.4 },
          { spot: { by: 'course', azimuth: 2, distance: 6 } },
          { spot: { by: 'at', point: ref('tap') } },
        ],
        {
          stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.1 }],
          knownLengths: [{ id: 'k', from: 'b', to: 'd', length: 14 }],
        },
      ),
      pipe('branch', [
        { by: 'at', point: ref('stack') },
        { by: 'between', from: ref('stack'), to: ref('main', 'b'), fraction: 0.4 },
        { by: 'at', point: ref('main', 'b') },
      ]),
    ],
    runs: [
      push(
        {
          id: 'down',
          letter: 'A',
          entry: 'stack',
          path: 'branch',
          zero: { at: 'rim', counter: 0.3, riser: 1.5, sweepRadius: 0.2 },
          head: { length: 0.12, zeroed: 'tail' },
        },
        [3, 18, 24, 28],
      ),
      push(
        {
          id: 'up',
          letter: 'B',
          entry: 'tap',
          path: 'main',
          direction: 'against-flow',
          branches: ['branch'],
          scale: { by: 'calibration', counted: 10, actual: 10.1 },
        },
        [
          { id: 'r5', counter: 7 },
          { id: 'r6', counter: 12.5 },
          { id: 'r7', counter: 19.9, seenAt: ref('main', 'b') },
          { id: 'r8', counter: 24 },
        ],
      ),
      push(
        {
          id: 'from-bend',
          letter: 'C',
          entry: 'co',
          path: 'main',
          zero: { at: 'point', counter: 2, point: ref('main', 'b') },
        },
        [
          { id: 'r9', counter: 8 },
          { id: 'r10', counter: 11, seenAt: ref('main', 'c') },
        ],
      ),
    ],
    pairs: [{ id: 'p', a: { run: 'down', reading: 'r4' }, b: { run: 'up', reading: 'r6' } }],
  });
}

describe('derivatives of the observations', () => {
  const derived = derive(site());
  const evidenced = new Set(['r2', 'r3', 'r4', 'r5', 'r6', 'r7', 'r9', 'r10']);
  const net = netOf(site(), derived, evidenced, {
    located: locatedAsDrawn(site(), derived, new Set()),
    looked: lookedAsDrawn(derived, new Set(['r4', 'r6'])),
  });
  const all = [...evidence(net), ...guesses(net)];

  it('has an observation of every kind', () => {
    expect(new Set(all.map(({ tag }) => tag.is))).toEqual(
      new Set([
        'point',
        'leg',
        'stray',
        'scale',
        'zero',
        'riser',
        'counter',
        'locate',
        'pair',
        'seen',
        'length',
        'bend',
      ]),
    );
  });

  it('counts a run that was zeroed at a bend from where that comes to lie', () => {
    const reading = netReading(net, 'r9');
    const bend = net.nodes.findIndex(({ key }) => key === 'main/b');
    if (reading === null || bend < 0) throw new Error('no such reading');
    expect(reading.mark.trace.start).toBeGreaterThan(6);
    expect(alongOf(reading, net.start, 0)).toBeCloseTo(reading.mark.trace.along, 9);
    const x = net.start.slice();
    x[2 * bend] = (x[2 * bend] ?? 0) + 0.5;
    const further = Math.hypot((x[2 * bend] ?? 0) - 0, x[2 * bend + 1] ?? 0) - Math.hypot(7, 1);
    expect(alongOf(reading, x, 0) - reading.mark.trace.along).toBeCloseTo(further, 2);
  });

  it.each(
    all
      .filter(({ observation: o }) => o.kind === 'custom')
      .map((t, i) => [`${observationName(t.tag)} ${i}`, t.observation] as const),
  )('%s', (_, o) => {
    if (o.kind !== 'custom') throw new Error('a custom observation');
    const random = seeded(7);
    for (let trial = 0; trial < 5; trial++) {
      const x = net.start.map((v) => v + (random() - 0.5) * 0.1);
      const given = new Float64Array(x.length);
      o.gradient(x, {
        add: (u, d) => {
          given[u] = (given[u] ?? 0) + d;
        },
      });
      for (let u = 0; u < x.length; u++) {
        const [up, down] = [x.slice(), x.slice()];
        up[u] = (up[u] ?? 0) + STEP;
        down[u] = (down[u] ?? 0) - STEP;
        const slope = (o.evaluate(up) - o.evaluate(down)) / (2 * STEP);
        expect(Math.abs((given[u] ?? 0) - slope), `unknown ${u}`).toBeLessThan(1e-6 * (1 + Math.abs(slope)));
      }
    }
  });
});
