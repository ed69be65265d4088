import type { Visit } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { visitsLatestFirst } from './visitOrder';

const visit = (id: string, date?: string): Visit => ({
  id,
  purpose: 'other',
  note: '',
  ...(date === undefined ? {} : { date }),
});

describe('the order of visits', () => {
  it.each<[string, readonly Visit[], string]>([
    ['by day', [visit('a', '2024-12-31'), visit('b', '2025-01-02'), visit('c', '2025-01-01')], 'b c a'],
    ['one day: the last added first', [visit('a', '2025-01-01'), visit('b', '2025-01-01')], 'b a'],
    ['without a day at the end', [visit('a'), visit('b', '1999-01-01'), visit('c')], 'b c a'],
    ['none', [], ''],
  ])('%s', (_, visits, order) => {
    expect(
      visitsLatestFirst(visits)
        .map((v) => v.id)
        .join(' '),
    ).toBe(order);
  });
});
