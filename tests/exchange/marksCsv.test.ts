import { marksCsv } from '@footmark/exchange';
import { gridToPlan, openGrid, typedSystem } from '@footmark/grid';
import { earthToPlan, fitRuns } from '@footmark/site';
import { en } from '@footmark/words';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { frontTerrace, rearAlley } from './rearAlley';

const FT = 0.3048;

type Row = Readonly<Record<string, string>>;

/** Read by a strict reader that we did not write (csv-parse): unequal rows and stray quotes are errors there. */
function readBack(csv: string): readonly Row[] {
  return parse(csv, { columns: true, record_delimiter: '\r\n' });
}

describe('the table of marks, read back by another reader', () => {
  const { site, derived } = rearAlley();
  const csv = marksCsv(site, derived, fitRuns(site, derived), en);
  const rows = readBack(csv);

  it('has one row for each mark, in their order', () => {
    expect(rows.map((row) => row.mark)).toEqual(derived.marks.map((m) => m.label));
    expect(rows.length).toBeGreaterThan(10);
  });

  it('holds what was computed, in decimal feet', () => {
    for (const [i, mark] of derived.marks.entries()) {
      const row = rows[i] ?? {};
      const { place } = mark;
      if (place === null) throw new Error(`${mark.label} has a place in this sample`);
      expect(Number(row.reading_ft)).toBeCloseTo(mark.reading.counter / FT, 3);
      expect(row.unit).toBe('ft');
      expect(Number(row.station_ft)).toBeCloseTo(place.station / FT, 2);
      expect(Number(row.x_ft)).toBeCloseTo(place.at.x / FT, 2);
      expect(Number(row.y_ft)).toBeCloseTo(place.at.y / FT, 2);
      expect(row.seen).toBe(en.observationName(mark.reading.seen));
      expect(row.path).not.toBe('');
    }
  });

  it('gives ties that lead to the mark: each taped distance is the distance from its reference, or from its near face', () => {
    const taped = derived.marks.filter((m) => m.place?.ties);
    expect(taped.length).toBeGreaterThan(5);
    for (const mark of taped) {
      const row = rows.find((r) => r.mark === mark.label) ?? {};
      for (const [i, tie] of (mark.place?.ties?.pair ?? []).entries()) {
        expect(row[`tie_${i + 1}_from`]).toBe(en.referenceName(tie.from, site));
        const [dx, dy] = [Number(row.x_ft) - tie.from.at.x / FT, Number(row.y_ft) - tie.from.at.y / FT];
        expect(Number(row[`tie_${i + 1}_ft`])).toBeCloseTo(Math.hypot(dx, dy) - tie.from.faceRadius / FT, 2);
      }
      expect(row.side).toMatch(/^on the (left|right), looking from /);
      expect(Number(row.cut_deg)).toBeGreaterThan(0);
      expect(Number(row.cut_deg)).toBeLessThan(180);
    }
  });

  it('gives the hole that finds each mark: twice the 95 % range along the pipe, and across it with the pipe', () => {
    const fit = fitRuns(site, derived);
    for (const [i, mark] of derived.marks.entries()) {
      const zone = fit?.marks.get(mark.reading.id)?.zone;
      if (zone === undefined) throw new Error(`${mark.label} has a zone in this sample`);
      expect(Number(rows[i]?.hole_length_ft)).toBeCloseTo((2 * zone.along) / FT, 2);
      expect(Number(rows[i]?.hole_width_ft)).toBeGreaterThan((2 * zone.across) / FT);
      expect(rows[i]?.state).not.toBe('');
    }
  });

  it('names the nearest trunk and the way to it and to the boundary', () => {
    const near = rows.filter((row) => row.nearest_trunk !== '');
    expect(near.length).toBe(rows.length);
    for (const row of near) {
      expect(Number.isFinite(Number.parseFloat(row.trunk_clearance_ft ?? ''))).toBe(true);
      expect(Number.isFinite(Number.parseFloat(row.boundary_clearance_ft ?? ''))).toBe(true);
    }
  });

  it('ends every row with CRLF and has as many rows as line ends', () => {
    expect(csv.split('\r\n').length).toBe(rows.length + 2);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });
});

describe('what people typed', () => {
  it('comes through whole: quotes, commas, line breaks, other scripts', () => {
    const note = 'joint "open", 2 in\nraíces 根';
    const { site, derived } = rearAlley((raw) => {
      for (const run of raw.runs) for (const reading of run.readings) reading.note = note;
    });
    for (const row of readBack(marksCsv(site, derived, fitRuns(site, derived), en)))
      expect(row.note).toBe(note);
  });

  it('is never run as a formula by a spreadsheet', () => {
    const { site, derived } = rearAlley((raw) => {
      for (const feature of raw.features) feature.name = `=HYPERLINK("x";"${feature.id}")`;
      for (const path of raw.paths) path.name = '@cmd';
      for (const run of raw.runs) for (const reading of run.readings) reading.note = '-1+1';
    });
    const numeric = /^-?\d+(\.\d+)?$/;
    for (const row of readBack(marksCsv(site, derived, fitRuns(site, derived), en))) {
      for (const cell of Object.values(row)) {
        if (!numeric.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      }
      expect(row.path).toBe("'@cmd");
      expect(row.note).toBe("'-1+1");
    }
  });
});

describe('other sites', () => {
  it('in metres are in metres', () => {
    const { site, derived } = rearAlley((raw) => {
      raw.units.length = 'm';
    });
    const [first] = readBack(marksCsv(site, derived, fitRuns(site, derived), en));
    expect(first?.unit).toBe('m');
    expect(Number(first?.x_m)).toBeCloseTo(derived.marks[0]?.place?.at.x ?? Number.NaN, 3);
  });

  it('with a mark that has no place leave its cells empty', () => {
    const { site, derived } = rearAlley((raw) => {
      for (const reading of raw.runs[0]?.readings ?? []) reading.counter += 1000;
    });
    const [first] = readBack(marksCsv(site, derived, fitRuns(site, derived), en));
    expect(first).toMatchObject({ mark: 'A1', path: '', station_ft: '', tie_1_from: '', cut_deg: '' });
    expect(Object.keys(first ?? {}).length).toBe(28);
    expect(first).toMatchObject({ latitude: '', longitude: '' });
  });

  it('without runs are a header alone', () => {
    const { site, derived } = rearAlley((raw) => {
      raw.runs = [];
      raw.features = raw.features.filter((f) => f.kind !== 'locate');
    });
    expect(marksCsv(site, derived, fitRuns(site, derived), en).split('\r\n').length).toBe(2);
  });
});

describe('on the earth', () => {
  const { site, derived } = frontTerrace();
  const { toEarth } = derived.frame;
  const system = typedSystem({
    name: 'Invented',
    definition: '+proj=tmerc +lat_0=45 +lon_0=-31 +k=0.9999 +x_0=200000 +y_0=0 +datum=NAD83 +units=us-ft',
  });
  const grid = system.ok ? openGrid(system.value) : system;
  if (!grid.ok) throw new Error(grid.code);

  it('every mark has latitude and longitude, and with a grid eastings and northings that lead back to it', () => {
    if (toEarth === null) return expect.fail('this sample lies on the earth');
    const rows = readBack(marksCsv(site, derived, fitRuns(site, derived), en, grid.value));
    expect(rows.length).toBe(derived.marks.length);
    for (const [i, row] of rows.entries()) {
      const at = derived.marks[i]?.place?.at ?? { x: Number.NaN, y: Number.NaN };
      const place = { latitudeDeg: Number(row.latitude), longitudeDeg: Number(row.longitude) };
      const back = earthToPlan(toEarth, place);
      expect(back.ok && Math.hypot(back.value.x - at.x, back.value.y - at.y)).toBeLessThan(0.01);
      const inGrid = { easting: Number(row.easting_us_ft), northing: Number(row.northing_us_ft) };
      const again = gridToPlan(grid.value, toEarth, inGrid);
      expect(again.ok && Math.hypot(again.value.x - at.x, again.value.y - at.y)).toBeLessThan(0.001);
      expect(row.grid).toBe('Invented, US survey feet (1200/3937 m)');
    }
  });
});
