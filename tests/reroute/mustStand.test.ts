// What no route is tried through, and who has to be asked: common practice, no source.
import { isToBeAsked, mustStand } from '@footmark/reroute';
import type { Feature, Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { straightDrain, thing } from './drain';

function siteWith(kind: Feature['kind'], carries?: string): Site {
  return straightDrain([thing('x', kind, [], carries === undefined ? {} : { carries })]);
}

describe('what no route is tried through', () => {
  it.each([
    ['building', undefined],
    ['tree', undefined],
    ['well', undefined],
    ['septic-tank', undefined],
    ['main', undefined],
    ['service', 'gas'],
    ['service', 'electric'],
    ['service', undefined],
    ['meter', 'gas'],
  ] as const)('%s that carries %s', (kind, carries) => {
    expect(mustStand('x', siteWith(kind, carries))).toBe(true);
  });

  it.each([
    ['service', 'communication'],
    ['meter', 'water'],
    ['boundary', undefined],
    ['pole', undefined],
  ] as const)('is not %s that carries %s', (kind, carries) => {
    expect(mustStand('x', siteWith(kind, carries))).toBe(false);
  });

  it('is not a tree for its roots alone, which are told to be minded', () => {
    expect(mustStand('roots/x', siteWith('tree'))).toBe(false);
  });
});

describe('who has to be asked first', () => {
  const less = { is: 'less-clearance', obstacle: 'x', from: 3, to: 1 } as const;

  it.each(['building', 'well', 'tree'] as const)('is somebody for less room to a %s', (kind) => {
    expect(isToBeAsked(less, siteWith(kind))).toBe(true);
  });

  it('is nobody for less room to a pole, or for less fall', () => {
    expect(isToBeAsked(less, siteWith('pole'))).toBe(false);
    expect(isToBeAsked({ is: 'less-fall', from: 0.02, to: 0.01 }, siteWith('well'))).toBe(false);
  });
});
