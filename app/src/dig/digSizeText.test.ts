import type { Excavation } from '@footmark/dig';
import { FOOT_M } from '@footmark/site';
import { expect, it } from 'vitest';
import { digSizeText } from './digSizeText';

const feet = (ft: number) => ft * FOOT_M;
const units = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;

it('a dig is as wide and as long as it is at the ground, not as long as its bottom', () => {
  const depth = { least: feet(10), most: feet(10), sigma: 0, from: 'said' } as const;
  const bottom = { width: feet(7), length: feet(7), outline: [] };
  const top = { width: feet(37), length: feet(27), outline: [], area: 0 };
  const of = { depth, bottom, top, volume: 0 } as unknown as Excavation; // what the line is made of
  expect(digSizeText(of, units)).toMatch(/^37\.0 ft wide × 27\.0 ft long at the top, 10\.0 ft deep/);
});
