import { derive, reachOfMark } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import type { LinePrimitive } from '../primitive';
import {
  drawn,
  fitOf,
  labelsOn,
  pointFeature,
  primitivesOn,
  pushed,
  straightSite,
  zoneOf,
} from '../testing/straightRun';
import { zoneOutline } from './drawZones';
import { holeCorners } from './holeCorners';

const site = straightSite({ runs: [pushed('A', [{ counter: 10 }, { counter: 20 }])] });
const fit = fitOf({
  marks: new Map([
    ['A1', { zone: zoneOf({}), fitted: null }],
    ['A2', { zone: zoneOf({ semiMajor: 3 }), fitted: null }],
  ]),
});
const lines = (drawing: ReturnType<typeof drawn>) =>
  primitivesOn(drawing, 'zones').filter((p): p is LinePrimitive => p.kind === 'line');

describe('search zones', () => {
  it('turn the azimuth of the longer axis, clockwise from north, into the outline’s direction', () => {
    // by hand: on azimuth 30° the end of a half axis of 2 is 2·sin 30° = 1 east and 2·cos 30° = √3 north of the mark
    const outline = zoneOutline({ x: 10, y: 20 }, zoneOf({ azimuth: Math.PI / 6 }));
    const [end] = outline;
    expect(end?.x).toBeCloseTo(11, 12);
    expect(end?.y).toBeCloseTo(20 + Math.sqrt(3), 12);
    // brute force: in the axes' own directions every point satisfies the ellipse's equation
    for (const { x, y } of outline) {
      const [dx, dy] = [x - 10, y - 20];
      const along = (dx * Math.sin(Math.PI / 6) + dy * Math.cos(Math.PI / 6)) / 2;
      const across = dx * Math.cos(Math.PI / 6) - dy * Math.sin(Math.PI / 6);
      expect(along ** 2 + across ** 2).toBeCloseTo(1, 10);
    }
  });

  it('put the hole’s length along the pipe and its width across', () => {
    // by hand: a pipe that flows east
    const corners = holeCorners({ x: 1, y: 2 }, Math.PI / 2, { length: 4, width: 3 });
    const expected = [
      [-1, 3.5],
      [3, 3.5],
      [3, 0.5],
      [-1, 0.5],
    ];
    corners.forEach(({ x, y }, i) => {
      expect(x).toBeCloseTo(expected[i]?.[0] ?? Number.NaN, 12);
      expect(y).toBeCloseTo(expected[i]?.[1] ?? Number.NaN, 12);
    });
  });

  it('are faint for all marks while none is chosen, without a hole', () => {
    const zones = lines(drawn(site, { fit }));
    expect(zones).toHaveLength(2);
    for (const zone of zones) {
      expect(zone.fill).toBeUndefined();
      expect(zone.stroke?.opacity).toBeLessThan(0.5);
    }
    expect(labelsOn(drawn(site, { fit }), 'zones')).toEqual([]);
  });

  it('of the chosen mark are clear, with a hole that reads on white and on dark paper, and its size', () => {
    const words = { hole: ({ length, width }: { length: number; width: number }) => `${length} by ${width}` };
    const drawing = drawn(site, { fit, words, highlight: { mark: { run: 'A', id: 'A1' } } });
    const zones = lines(drawing);
    expect(zones).toHaveLength(4);
    const clear = zones.filter((z) => z.stroke?.opacity === undefined);
    expect(clear.map((z) => [z.stroke?.ink, z.fill?.opacity ?? null, z.stroke?.dash !== undefined])).toEqual([
      ['sewer', expect.any(Number), false],
      // white for a proposed excavation (APWA / ANSI Z535.1, STANDARDS C1), dark dashes in it
      ['proposed', null, false],
      ['proposed-dash', null, true],
    ]);
    expect(clear[1]?.points).toEqual(holeCorners({ x: 0, y: 10 }, 0, { length: 4, width: 2.1 }));
    expect(clear[2]?.stroke?.weight).toBeLessThan(clear[1]?.stroke?.weight ?? 0);
    expect(labelsOn(drawing, 'zones')).toMatchObject([{ text: '4 by 2.1', at: { x: 1.05, y: 12 } }]);
  });

  it('do not answer to a press and do not make the site larger', () => {
    const wide = fitOf({ marks: new Map([['A1', { zone: zoneOf({ semiMajor: 500 }), fitted: null }]]) });
    const drawing = drawn(site, { fit: wide, highlight: { mark: { run: 'A', id: 'A1' } } });
    for (const zone of lines(drawing)) expect(zone.target).toBeUndefined();
    expect(drawing.bounds).toEqual(drawn(site).bounds);
  });

  it('are left out where nothing fixes the mark', () => {
    const loose = zoneOf({ semiMajor: Number.POSITIVE_INFINITY });
    const nowhere = fitOf({ marks: new Map([['A1', { zone: loose, fitted: null }]]) });
    expect(lines(drawn(site, { fit: nowhere }))).toEqual([]);
  });
});

describe('the reach of the chosen mark', () => {
  const ends = straightSite({
    features: [pointFeature('tap', 'tap', 0, 30)],
    runs: [
      pushed('A', [{ counter: 16 }]),
      pushed('B', [{ counter: 15 }], { entry: 'tap', direction: 'against-flow' }),
    ],
    pairs: [{ id: 'one', a: { run: 'A', reading: 'A1' }, b: { run: 'B', reading: 'B1' } }],
  });
  const reachIn = (of: typeof ends, label: string) => {
    const derived = derive(of);
    const mark = derived.marks.find((m) => m.label === label);
    const reach = mark === undefined ? null : reachOfMark(of, derived, mark);
    if (reach === null) throw new Error('the mark has a reach');
    return reach;
  };

  it('is a solid line about it, and another line about the pipe', () => {
    const reach = reachIn(ends, 'A1');
    const drawing = drawn(ends, { reach, words: { reach: 'reach' } });
    const [pipe, mark] = lines(drawing);
    expect([pipe?.stroke?.dash === undefined, mark?.stroke?.dash === undefined]).toEqual([false, true]);
    const [a, b] = reach.knowns;
    if (a === undefined || b === undefined) throw new Error('it is known from both ends');
    // no point of the outline is further from either end than its cable and slack
    for (const { x, y } of mark?.points ?? []) {
      expect(Math.hypot(x, y)).toBeLessThanOrEqual(a.cable + a.slack + 1e-9);
      expect(Math.hypot(x, y - 30)).toBeLessThanOrEqual(b.cable + b.slack + 1e-9);
    }
    // and every point of the pipe's has both ends on a string of both cables
    for (const { x, y } of pipe?.points ?? []) {
      const string = a.cable + a.slack + b.cable + b.slack;
      expect(Math.hypot(x, y) + Math.hypot(x, y - 30)).toBeCloseTo(string, 9);
    }
    expect(labelsOn(drawing, 'zones').map((l) => l.text)).toEqual(['reach']);
  });

  it('is not drawn when one cable alone tells of it', () => {
    expect(lines(drawn(site, { reach: reachIn(site, 'A1') }))).toEqual([]);
  });
});
