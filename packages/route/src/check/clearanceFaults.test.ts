import { pointAtAzimuth, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Obstacle } from '../request';
import { at, codes, onlyFault, RADIUS, request, sound, TUBE, withObstacle } from '../testing/soundRoute';

// Distances by hand on an invented site; the external of an arc by the handbook: E = R (sec(d/2) - 1).

describe('a route too near to an obstacle', () => {
  const near = (shape: Obstacle['shape'], clearance: number) =>
    onlyFault(withObstacle({ id: 'thing', shape, clearance }), sound);
  const clear = (shape: Obstacle['shape'], clearance: number) =>
    codes(withObstacle({ id: 'thing', shape, clearance }), sound);
  const outside = TUBE / 2;

  it('is told of a circle beside a straight, from the outside of the pipe', () => {
    const post = { is: 'circle', centre: at(3, 6), radius: 0.2 } as const;
    expect(clear(post, 0.8 - outside + 0.0009)).toEqual([]);
    expect(near(post, 0.8 - outside + 0.0011)).toMatchObject({
      code: 'too-near',
      at: { x: expect.closeTo(2, 9), y: expect.closeTo(6, 2) },
      values: { obstacle: 'thing', clearance: expect.closeTo(0.8 - outside, 5) },
    });
  });

  it('is told of a corner of a ring, and of its edge', () => {
    const corner = { is: 'ring', points: [at(3, 6), at(4, 5), at(4, 7)] } as const;
    expect(clear(corner, 1 - outside + 0.0009)).toEqual([]);
    expect(near(corner, 1 - outside + 0.0011)?.values).toMatchObject({
      clearance: expect.closeTo(1 - outside, 5),
    });
    const wall = { is: 'ring', points: [at(2.5, 4.5), at(2.6, 4.5), at(2.6, 6.5), at(2.5, 6.5)] } as const;
    expect(clear(wall, 0.5 - outside)).toEqual([]);
    expect(near(wall, 0.502 - outside)?.code).toBe('too-near');
  });

  it('is told of a band along a line', () => {
    const cable = { is: 'line', points: [at(3, 4.5), at(3, 6), at(4, 6)], halfWidth: 0.15 } as const;
    expect(clear(cable, 0.85 - outside + 0.0009)).toEqual([]);
    expect(near(cable, 0.85 - outside + 0.0011)?.values).toMatchObject({ asked: 0.85 - outside + 0.0011 });
    const peg = { is: 'line', points: [at(3, 5)], halfWidth: 0.15 } as const;
    expect(clear(peg, 0.85 - outside)).toEqual([]);
    expect(near(peg, 0.852 - outside)?.code).toBe('too-near');
  });

  it('is measured at the arc and not at the corner of the legs', () => {
    // external E = R (sec(d/2) - 1) between the corner and the arc, along the bisector, on the outside of the turn
    const external = RADIUS * (1 / Math.cos(radians(22.5)) - 1);
    const out = pointAtAzimuth(at(0, 2), radians(22.5 - 90), 1);
    const post = { is: 'circle', centre: out, radius: 0.1 } as const;
    expect(clear(post, 0.9 + external - outside + 0.0009)).toEqual([]);
    expect(near(post, 0.9 + external - outside + 0.0012)?.values).toMatchObject({
      clearance: expect.closeTo(0.9 + external - outside, 4),
    });
    // and on the inside it is as much nearer
    const inward = pointAtAzimuth(at(0, 2), radians(22.5 + 90), 1);
    const stake = { is: 'circle', centre: inward, radius: 0.1 } as const;
    const inside = near(stake, 0.9 - external - outside + 0.0012);
    expect(inside?.code).toBe('too-near');
  });

  it('may touch what asks no clearance, and not enter it', () => {
    const touching = { is: 'circle', centre: at(2 + 0.5 + outside, 6), radius: 0.5 } as const;
    expect(clear(touching, 0)).toEqual([]);
    expect(near({ ...touching, radius: 0.502 }, 0)?.values).toMatchObject({
      clearance: expect.closeTo(-0.002, 5),
    });
  });

  it('has a clearance below 0 inside a ring', () => {
    const shed = { is: 'ring', points: [at(1, 5), at(3, 5), at(3, 7), at(1, 7)] } as const;
    expect(near(shed, 0)?.values).toMatchObject({ clearance: expect.closeTo(-1 - outside, 2), asked: 0 });
  });

  it('may be in the notch of an L', () => {
    const points = [at(1.5, 6), at(4, 6), at(4, 5), at(3, 5), at(3, 6.4), at(1.5, 6.4)];
    const crossing = { is: 'ring', points } as const;
    expect(near(crossing, 0)?.code).toBe('too-near');
    const notch = [at(2.5, 3), at(4, 3), at(4, 7), at(3, 7), at(3, 4), at(2.5, 4)];
    expect(clear({ is: 'ring', points: notch }, 0.4)).toEqual([]);
    expect(near({ is: 'ring', points: notch }, 0.5)?.values).toMatchObject({ asked: 0.5 });
  });
});

describe('free ends', () => {
  it('let a route leave a wall, and no further than they reach', () => {
    // 0.3 m off the wall the outside of the pipe is 0.3 m from it only after 0.3 m + its half width
    expect(codes({ ...request, freeEnds: 0.36 }, sound)).toEqual([]);
    expect(codes({ ...request, freeEnds: 0.34 }, sound)).toEqual(['too-near']);
  });

  it('ask as much as there is at the start itself', () => {
    const along: Obstacle = {
      id: 'kerb',
      shape: { is: 'line', points: [at(0.2, -1), at(0.2, 0.3)], halfWidth: 0.02 },
      clearance: 0.5,
    };
    const asked = withObstacle(along);
    // as near all along: allowed within the free metre, and the kerb is 0.5 m off before it ends
    expect(codes(asked, sound)).toEqual([]);
    const nearer = { ...along.shape, points: [at(0.2, -1), at(0.19, 0.3)] } as Obstacle['shape'];
    expect(codes(withObstacle({ ...along, shape: nearer }), sound)).toEqual(['too-near']);
  });

  it('ask in full of what the start is clear of', () => {
    const post: Obstacle = {
      id: 'post',
      shape: { is: 'circle', centre: at(0.3, 0.6), radius: 0.05 },
      clearance: 0.3,
    };
    expect(codes(withObstacle(post), sound)).toEqual(['too-near']);
  });

  it('hold at the end of the route as well', () => {
    const manhole: Obstacle = {
      id: 'manhole',
      shape: { is: 'circle', centre: at(2, 8.5), radius: 0.5 },
      clearance: 0.5,
    };
    expect(codes(withObstacle(manhole), sound)).toEqual([]);
    expect(codes({ ...withObstacle(manhole), freeEnds: 0.5 }, sound)).toEqual(['too-near']);
  });
});
