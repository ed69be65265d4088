import { describe, expect, it } from 'vitest';
import { en } from './en';

const FEET = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
const { sheet } = en;

describe('what a sheet says', () => {
  it('of its scale', () => {
    expect(sheet.scaleText(120, 10)).toBe('1 in = 10 ft');
    expect(sheet.scaleText(137, null)).toBe('1:137');
  });

  it('of bends, by name and angle', () => {
    expect(sheet.bendItem('1/16', Math.PI / 8)).toBe('1/16 bend, 22.5°');
    expect(sheet.bendItem(null, -0.54)).toBe('Bend, 30.94°, no standard one');
  });

  it('of a place, to its owner, with what is known alone', () => {
    const place = {
      along: 19.75,
      entry: 'Floor cleanout',
      depth: 2,
      near: { thing: 'Sycamore', distance: 0.6 },
    };
    expect(sheet.ownerPlaceText(place, FEET)).toBe(
      '64.8 ft of pipe from Floor cleanout, about 6.6 ft down, 2.0 ft from Sycamore.',
    );
    expect(sheet.ownerPlaceText({ along: 3, entry: null, depth: null, near: null }, FEET)).toBe(
      '9.8 ft of pipe from where the camera went in.',
    );
    const named = { ...place, depth: null, near: { thing: "Mara's oak", distance: 0 } };
    expect(sheet.ownerPlaceText(named, FEET)).toBe("64.8 ft of pipe from Floor cleanout, at Mara's oak.");
  });

  it('of a piece that nobody saw', () => {
    const gap = { pipe: 'Lateral', length: 3.048, why: ['Run A ended at A10: could not pass.'] };
    expect(sheet.ownerGapText({ ...gap, whole: false }, FEET)).toBe(
      'Lateral: 10.0 ft of it was not seen. Run A ended at A10: could not pass.',
    );
    expect(sheet.ownerGapText({ ...gap, why: [], whole: true }, FEET)).toBe(
      'Lateral: no camera went through it (10.0 ft).',
    );
  });
});
