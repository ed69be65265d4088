import { describe, expect, it } from 'vitest';
import { dependencyOrder } from './dependencyOrder';

const needs = (table: Record<string, readonly string[]>) => new Map(Object.entries(table));

describe('dependencyOrder', () => {
  it('puts each name after all that it needs', () => {
    const table = needs({ a: ['b', 'c'], b: ['d'], c: ['d'], d: [], e: ['a'] });
    const { order, circular } = dependencyOrder(table);
    expect(circular).toEqual([]);
    expect([...order].sort()).toEqual(['a', 'b', 'c', 'd', 'e']);
    for (const [name, list] of table) {
      for (const need of list) expect(order.indexOf(need)).toBeLessThan(order.indexOf(name));
    }
  });

  it('passes over needs that are no names of the table', () => {
    expect(dependencyOrder(needs({ a: ['elsewhere'] }))).toEqual({ order: ['a'], circular: [] });
  });

  it('finds rings of one, two and three', () => {
    expect(dependencyOrder(needs({ a: ['a'] })).circular).toEqual(['a']);
    expect(dependencyOrder(needs({ a: ['b'], b: ['a'] })).circular).toHaveLength(1);
    expect(dependencyOrder(needs({ x: ['a'], a: ['b'], b: ['c'], c: ['a'], y: [] })).circular).toHaveLength(
      1,
    );
  });

  it('does not overflow on a chain of 100,000', () => {
    const chain = new Map(Array.from({ length: 100_000 }, (_, i) => [`n${i}`, [`n${i + 1}`]]));
    const { order, circular } = dependencyOrder(chain);
    expect(circular).toEqual([]);
    expect(order[0]).toBe('n99999');
    expect(order.at(-1)).toBe('n0');
  });
});
