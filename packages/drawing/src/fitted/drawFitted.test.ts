import type { FittedPath } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipePens } from '../pipe/pipePens';
import {
  drawn,
  fitOf,
  labelsOn,
  lateral,
  primitivesOn,
  pushed,
  straightSite,
  zoneOf,
} from '../testing/straightRun';
import { lineOfFitted } from './drawFitted';

const site = straightSite({ runs: [pushed('A', [{ counter: 10 }, { counter: 20 }])] });
const known = { measured: true, sigma: 0.1 };
/** The pipe bent to the east, with a point in its middle that is not there as drawn. */
const bent: FittedPath = {
  id: 'p',
  points: [
    { ...known, vertex: 'a', added: null, at: { x: 0, y: 0 }, moved: 0 },
    { ...known, vertex: null, added: { after: 'a', locates: ['l'] }, at: { x: 0.5, y: 15 }, moved: 0.5 },
    { ...known, vertex: 'b', added: null, at: { x: 0, y: 30 }, moved: 0 },
  ],
};
const zone = zoneOf({});
const fit = fitOf({
  paths: [bent],
  marks: new Map([
    ['A1', { zone, fitted: { at: { x: 0.3, y: 10.4 }, off: 0.5, zone } }],
    ['A2', { zone, fitted: { at: { x: 0, y: 20.005 }, off: 0.005, zone } }],
  ]),
});

describe('what was fitted', () => {
  it('is another line than any pipe that is drawn, with an open circle at each point', () => {
    const own = primitivesOn(drawn(site, { fit }), 'fitted').filter((p) => p.target?.kind === 'path');
    const [line] = own.filter((p) => p.kind === 'line');
    const points = line?.kind === 'line' ? line.points : [];
    expect(points).toHaveLength(3);
    bent.points.forEach(({ at }, i) => {
      expect(points[i]?.x).toBeCloseTo(at.x, 12);
      expect(points[i]?.y).toBeCloseTo(at.y, 12);
    });
    const dashes = Object.values(pipePens).flatMap((pens) =>
      [...pens.measured, ...pens.assumed].map((stroke) => stroke.dash),
    );
    expect(line?.stroke?.dash).toBeDefined();
    expect(dashes).not.toContainEqual(line?.stroke?.dash);
    expect(own.flatMap((p) => (p.kind === 'symbol' ? [p.at] : []))).toEqual(bent.points.map((p) => p.at));
  });

  it('rounds its corners as the pipe’s are', () => {
    const line = lineOfFitted(bent, { ...lateral, bendRadius: 4 });
    // by hand: legs that turn by 2·atan(0.5/15) = 0.0666 rad; the bend's middle is R·(1/cos(Δ/2) − 1) = 2.22 mm inside the corner
    const nearest = Math.min(...line.map((p) => Math.hypot(p.x - 0.5, p.y - 15)));
    expect(nearest).toBeCloseTo(4 * (Math.hypot(15, 0.5) / 15 - 1), 6);
  });

  it('goes straight from point to point where two of them are one and no pipe can be laid', () => {
    const [a, b, c] = bent.points;
    if (a === undefined || b === undefined || c === undefined) throw new Error('three points');
    expect(lineOfFitted({ id: 'p', points: [a, a, c] }, lateral)).toEqual([a.at, a.at, c.at]);
  });

  it('joins each mark that would move to its fitted place, and leaves the others alone', () => {
    const own = primitivesOn(drawn(site, { fit }), 'fitted').filter((p) => p.target?.kind === 'reading');
    expect(own).toMatchObject([
      {
        kind: 'line',
        points: [
          { x: 0, y: 10 },
          { x: 0.3, y: 10.4 },
        ],
      },
      { kind: 'symbol', symbol: 'mark-fitted', at: { x: 0.3, y: 10.4 } },
    ]);
  });

  it('says what it is, where there is a word for it', () => {
    expect(labelsOn(drawn(site, { fit, words: { fitted: 'fitted' } }), 'fitted')).toMatchObject([
      { text: 'fitted', id: 'p/fitted' },
    ]);
    expect(labelsOn(drawn(site, { fit }), 'fitted')).toEqual([]);
  });

  it.each([
    ['is taken and stands', fitOf({ ...fit, taken: true, pending: 0 })],
    ['did not converge', fitOf({ ...fit, status: 'not-converged' })],
    ['has no evidence', fitOf({ ...fit, status: 'no-evidence' })],
    ['moves nothing', fitOf({ paths: [{ ...bent, points: bent.points.map((p) => ({ ...p, moved: 0 })) }] })],
  ])('is not drawn when the fit %s', (_, of) => {
    expect(primitivesOn(drawn(site, { fit: of }), 'fitted')).toEqual([]);
  });

  it('is drawn again when more would move than was taken', () => {
    const again = fitOf({ ...fit, taken: true, pending: 0.5 });
    expect(primitivesOn(drawn(site, { fit: again }), 'fitted').length).toBeGreaterThan(0);
  });
});
