import { derivedReport, setOutCsv } from '@footmark/exchange';
import { setOutsOf } from '@footmark/site';
import { en } from '@footmark/words';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { rearAlley } from './rearAlley';

const FT = 0.3048;

const at = (x: number, y: number) => ({ by: 'coordinates', x: x * FT, y: y * FT }) as const;

/** The sample's yard with a pipe to be laid in it: 30 ft, a 45° bend to the right, 20 ft, and a fall of 2 % from a known invert. */
const { site, derived } = rearAlley((raw) => {
  raw.paths.push({
    id: 'new',
    name: 'New, "east" line',
    state: 'proposed',
    vertices: [
      { id: 'a', spot: at(60, 0), level: { is: 'invert', level: 90 * FT } },
      { id: 'b', spot: at(60, 30) },
      { id: 'c', spot: at(60 + 20 * Math.SQRT1_2, 30 + 20 * Math.SQRT1_2) },
    ],
    bendRadius: 0,
    stretches: [{ from: 0, material: 'plastic', diameter: (4 / 12) * FT, slope: 0.02 }],
  });
});
const [setOut] = setOutsOf(site, derived);

describe('the table that sets a proposed pipe out, read back by another reader', () => {
  const csv = setOutCsv(site, derived, en);
  // read by a strict reader that we did not write (csv-parse): unequal rows and stray quotes are errors there
  const rows: readonly Readonly<Record<string, string>>[] = parse(csv, {
    columns: true,
    record_delimiter: '\r\n',
  });

  it('has one row for each point, with the flow, of proposed pipes alone', () => {
    expect(rows.map((row) => row.point)).toEqual(['NEL-1', 'NEL-2', 'NEL-3', 'NEL-4']);
    expect(new Set(rows.map((row) => row.path))).toEqual(new Set(['New, "east" line']));
    expect(rows.map((row) => row.is)).toEqual(['Start', 'Straight on', '1/8 bend, 45° right', 'End']);
  });

  it('holds lengths in decimal feet', () => {
    expect(rows.map((row) => Number(row.station_ft))).toEqual([0, 15, 30, 50]);
    expect(rows.map((row) => row.from_before_ft)).toEqual(['', '15', '15', '20']);
    // √(1 + 0.02²) a foot
    expect(Number(rows[3]?.developed_ft)).toBeCloseTo(50.01, 3);
    expect(rows.map((row) => Number(row.invert_ft))).toEqual([90, 89.7, 89.4, 89]);
    expect(rows.map((row) => row.turn_deg)).toEqual(['', '', '45', '']);
    expect(rows.map((row) => row.fitting)).toEqual(['', '', '1/8 bend', '']);
  });

  it('gives tapes that lead to the point: each is the distance from its reference, or from its near face', () => {
    const taped = setOut?.points.filter((p) => p.ties) ?? [];
    expect(taped.length).toBeGreaterThan(0);
    for (const point of taped) {
      const row = rows.find((r) => r.point === point.label) ?? {};
      for (const [i, tie] of (point.ties?.pair ?? []).entries()) {
        expect(row[`tie_${i + 1}_from`]).toBe(en.referenceName(tie.from, site));
        const [dx, dy] = [Number(row.x_ft) - tie.from.at.x / FT, Number(row.y_ft) - tie.from.at.y / FT];
        expect(Number(row[`tie_${i + 1}_ft`])).toBeCloseTo(Math.hypot(dx, dy) - tie.from.faceRadius / FT, 2);
      }
    }
  });

  it('is its header alone without a proposed pipe', () => {
    const plain = rearAlley();
    expect(setOutCsv(plain.site, plain.derived, en).trim().split('\r\n')).toHaveLength(1);
  });
});

describe('the report', () => {
  it('has the same points in metres, with what people see', () => {
    const report = derivedReport(site, derived, null, en, '2026-05-01');
    expect(report.setOut).toHaveLength(1);
    const [of] = report.setOut;
    expect(of).toMatchObject({ path: 'new', pathName: 'New, "east" line', evenGround: false });
    expect(of?.points.map((p) => p.station)).toEqual([0, 4.572, 9.144, 15.24]);
    expect(of?.points[2]).toMatchObject({
      label: 'NEL-3',
      is: 'bend',
      name: '1/8 bend, 45° right',
      bend: { turn: Number((Math.PI / 4).toFixed(9)), known: null, fitting: '1/8' },
      invert: { value: Number((89.4 * FT).toFixed(6)), by: 'beyond' },
      display: { station: '30.0 ft' },
    });
    expect(JSON.parse(JSON.stringify(report.setOut))).toEqual(report.setOut);
  });
});
