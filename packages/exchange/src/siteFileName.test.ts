import { newSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { siteFileName } from './siteFileName';

const named = (name: string) =>
  newSite({
    id: 's',
    name,
    createdAt: '2026-05-04T08:00:00Z',
    units: { length: 'ft', diameter: 'in', direction: 'bearing' },
  });

describe('a file name', () => {
  it.each([
    ['Rear-alley lateral', 'Rear-alley-lateral.csv'],
    ['12 Elm St. / rear', '12-Elm-St-rear.csv'],
    ['../../etc/passwd', 'etc-passwd.csv'],
    ['a\\b:c*?"<>|\u0000d', 'a-b-c-d.csv'],
    ['Peña y Günther', 'Peña-y-Günther.csv'],
    ['', 'site.csv'],
    ['...', 'site.csv'],
    ['CON', 'site-CON.csv'],
    ['nul', 'site-nul.csv'],
    ['Lot \u{1F333}', 'Lot.csv'],
  ])('of %j is %s', (name, file) => {
    expect(siteFileName(named(name), 'csv')).toBe(file);
  });

  it('stays short enough for any file system, also in the longest letters', () => {
    const file = siteFileName(named('\u{20000}'.repeat(100)), 'json');
    expect(new TextEncoder().encode(file).length).toBeLessThanOrEqual(255);
    expect(file).toBe(`${'\u{20000}'.repeat(60)}.json`);
  });
});
