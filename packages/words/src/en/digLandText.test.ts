import type { Feature } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { landCrossingText, landName, landText, whoseAtText } from './digLandText';

const { site } = sampleYard({ length: 'm', diameter: 'mm', direction: 'azimuth' });
const yardStreet: Feature = { id: 'st', kind: 'street', name: 'Mill Street', vertices: [], fields: {} };
const piece = (whose: 'private' | 'public' | 'shared', from: number, to: number) => ({
  path: 'p1',
  whose,
  from,
  to,
  features: [],
});

describe('whose land', () => {
  it('is told by how much of the pipes is somebody else’s, the longest first', () => {
    expect(landText([piece('private', 0, 9)], site.units)).toBe('all on the lot');
    const pieces = [
      piece('shared', 0, 2),
      piece('private', 2, 9),
      piece('public', 9, 14),
      piece('shared', 14, 15),
    ];
    expect(landText(pieces, site.units)).toBe('5.00 m public, 3.00 m in an easement');
  });

  it('is called by its name, with who holds it', () => {
    const [first] = site.features;
    if (first === undefined) throw new Error('the yard has features');
    const way = {
      ...first,
      id: 'row',
      kind: 'right-of-way',
      name: 'Mill Lane',
      fields: { holder: 'the county' },
    };
    const held = { ...site, features: [way as typeof first] };
    expect(landName('row', held)).toBe('Mill Lane, held by the county');
    expect(landName(first.id, site)).not.toContain('held by');
  });

  it('is told of a place, with who holds it', () => {
    const street = { ...site, features: [yardStreet] };
    const at = (whose: 'public' | 'private') => ({ whose, features: ['st'] }) as const;
    expect(whoseAtText(at('public'), 'brief', street)).toBe('On public land');
    expect(whoseAtText(at('public'), 'full', street)).toBe('On public land: Mill Street');
    expect(whoseAtText(at('private'), 'full', street)).toBe('');
  });

  it('is told where a pipe crosses', () => {
    const street = { ...site, features: [yardStreet] };
    const crossing = { path: 'p1', station: 12.34, at: { x: 0, y: 0 }, feature: 'st' } as const;
    const told = landCrossingText({ ...crossing, kind: 'street', from: 'private', to: 'public' }, street);
    expect(told).toBe('Mill Street at 12.34 m');
  });
});
