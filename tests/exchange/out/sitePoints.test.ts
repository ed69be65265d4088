import { POINTS_ORDER, siteFileName, sitePoints } from '@footmark/exchange';
import { gridToPlan, openGrid, utmSystem } from '@footmark/grid';
import { setOutsOf } from '@footmark/site';
import { en } from '@footmark/words';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { frontTerrace, rearAlley, type Sample } from '../rearAlley';
import { isHarmless, nameWickedly } from './typed';

/** Read by a strict reader that we did not write (csv-parse), with `#` for comments and the columns by their letters. */
function readBack(text: string): readonly Readonly<Record<string, string>>[] {
  return parse(text, { columns: [...POINTS_ORDER], comment: '#', quote: null, record_delimiter: '\r\n' });
}

function written({ site, derived }: Sample): string {
  const text = sitePoints(site, derived, en, { is: 'site' });
  if (!text.ok) throw new Error(text.code);
  return text.value;
}

describe('points for a surveyor', () => {
  const alley = rearAlley();
  const text = written(alley);

  it('state their order, their coordinates and their unit above, and the order in the file’s name', () => {
    const [first, second] = text.split('\r\n');
    expect(first).toBe('# P,N,E,Z,D (point, northing, easting, elevation, description)');
    expect(second).toContain('international feet (0.3048 m)');
    expect(siteFileName(alley.site, `${POINTS_ORDER}.csv`)).toBe('Rear-alley-lateral.PNEZD.csv');
  });

  it('have northing before easting, numbers from 1, and no elevation that was not measured', () => {
    const rows = readBack(text);
    expect(rows.map((r) => r.P)).toEqual(rows.map((_, i) => String(i + 1)));
    for (const [i, mark] of alley.derived.marks.entries()) {
      const row = rows[i];
      expect(row?.D?.startsWith(`${mark.label} `)).toBe(true);
      expect(Number(row?.N)).toBeCloseTo((mark.place?.at.y ?? Number.NaN) / 0.3048, 2);
      expect(Number(row?.E)).toBeCloseTo((mark.place?.at.x ?? Number.NaN) / 0.3048, 2);
      expect(row?.Z).toBe('');
    }
    const levels = rows.filter((r) => r.Z !== '').map((r) => r.Z);
    expect(levels.length).toBeGreaterThan(4);
    expect(levels).toContain('98.600');
  });

  it('say of a level that it is the invert’s: what is set out is painted on the ground above it', () => {
    const planned = rearAlley((raw) => {
      const [first] = raw.paths;
      if (first !== undefined) first.state = 'proposed';
    });
    const setOut = setOutsOf(planned.site, planned.derived).flatMap((s) => s.points);
    const rows = readBack(written(planned));
    const known = setOut.filter((p) => p.invert !== null);
    expect(known.length).toBeGreaterThan(1);
    for (const { label, invert } of known) {
      const row = rows.find((r) => r.D?.startsWith(`${label} `));
      expect(Number(row?.Z)).toBeCloseTo((invert?.invert ?? Number.NaN) / 0.3048, 2);
      expect(row?.D).toMatch(/ Invert level$/);
    }
    for (const r of rows.filter((row) => row.Z === '')) expect(r.D).not.toMatch(/ Invert level$/);
  });

  it('have no cell that another reader would take apart, whatever things are called', () => {
    const wicked = readBack(written(rearAlley(nameWickedly)));
    expect(wicked.length).toBe(readBack(text).length);
    for (const { D } of wicked) {
      expect(D).toMatch(/^[^,"]*$/);
      expect(D?.replace(/[<>]/g, '')).toSatisfy(isHarmless);
    }
  });

  it('in a grid lead back to where they are', () => {
    const { site, derived } = frontTerrace();
    const grid = openGrid(utmSystem({ zone: 25, hemisphere: 'N' }));
    const { toEarth } = derived.frame;
    if (!grid.ok || toEarth === null) return expect.fail('no grid');
    const points = sitePoints(site, derived, en, { is: 'grid', grid: grid.value });
    if (!points.ok) return expect.fail(points.code);
    expect(points.value).toContain('UTM zone 25N, WGS 84, metres, EPSG 32625');
    const rows = readBack(points.value);
    for (const [i, mark] of derived.marks.entries()) {
      const at = { easting: Number(rows[i]?.E), northing: Number(rows[i]?.N) };
      const back = gridToPlan(grid.value, toEarth, at);
      const place = mark.place?.at ?? { x: Number.NaN, y: Number.NaN };
      expect(back.ok && Math.hypot(back.value.x - place.x, back.value.y - place.y)).toBeLessThan(0.002);
    }
  });
});
