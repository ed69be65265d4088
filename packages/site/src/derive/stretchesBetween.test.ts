import { expect, it } from 'vitest';
import type { Stretch } from '../document/path';
import { stretchesBetween } from './stretchesBetween';

const stretch = (from: number, material: Stretch['material']): Stretch => ({
  from,
  material,
  diameter: 0.1,
  slope: 0.02,
});

// by hand
it('a pipe between two stations is told by its pieces', () => {
  const stretches = [stretch(0, 'clay'), stretch(5, 'plastic'), stretch(12, 'concrete')];
  const between = (from: number, to: number) =>
    stretchesBetween(stretches, from, to).map((s) => [s.material, s.from, s.to]);
  expect(between(2, 20)).toEqual([
    ['clay', 2, 5],
    ['plastic', 5, 12],
    ['concrete', 12, 20],
  ]);
  expect(between(5, 12)).toEqual([['plastic', 5, 12]]);
  // a stretch that begins past the end of a pipe that was drawn shorter
  expect(between(0, 4)).toEqual([['clay', 0, 4]]);
  expect(between(4, 4)).toEqual([]);
});
