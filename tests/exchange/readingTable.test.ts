import { marksCsv, parseReadingTable, type ReadingRow } from '@footmark/exchange';
import type { LengthStyle } from '@footmark/site';
import { fitRuns } from '@footmark/site';
import { en } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { rearAlley } from './rearAlley';

/** International foot and inch in metres: exact by the agreement of 1959 (NIST SP 811, appendix B.6). */
const FT = 0.3048;
const IN = 0.0254;

const read = (text: string, unit: LengthStyle = 'ft') =>
  parseReadingTable(text, { unit, names: en.observationName });

/** The readings as a list that a person can compare with the table by eye; counters in `unit` metres. */
const told = (rows: readonly ReadingRow[], unit: number) =>
  rows.map((row) => [
    Number((row.counter / unit).toFixed(6)),
    row.seen,
    row.clock?.from,
    row.clock?.to,
    row.note,
  ]);

const problemsOf = (text: string, unit?: LengthStyle) =>
  read(text, unit).problems.map(({ line, column, code, rowKept }) => [line, column, code, rowKept]);

describe('worked tables (invented)', () => {
  it('in feet and inches, from a spreadsheet, with a total', () => {
    const table = read(
      [
        '\uFEFFFootage\tWhat was seen\tClock\tRemarks',
        `12' 6"\tRoot intrusion\t10-2\theavy at the joint`,
        `23'6 1/2"\tOffset joint\t3 o'clock\t"two inches,\r\nbottom step"`,
        '',
        `40 ft\tWye\t\tfrom the left`,
        `41-3\tBelly\t6:00\t`,
        `55 ft 0 in\tEnd\t\t`,
        `Total\t55' 0"\t\t`,
      ].join('\r\n'),
      'ft-in',
    );
    expect(told(table.rows, IN)).toEqual([
      [150, 'roots', 10, 2, 'Root intrusion; heavy at the joint'],
      [282.5, 'offset-joint', 3, 3, 'two inches,\nbottom step'],
      [480, 'fitting', undefined, undefined, 'Wye; from the left'],
      [495, 'sag', 6, 6, 'Belly'],
      [660, 'end-of-run', undefined, undefined, ''],
    ]);
    expect(table.rows.map(({ line }) => line)).toEqual([2, 3, 6, 7, 8]);
    expect(table.problems).toEqual([
      { line: 9, column: null, code: 'total-row', text: `Total 55' 0"`, rowKept: false },
    ]);
    expect(table.unit).toBe('ft-in');
  });

  it('in decimal feet, typed with spaces and without a header', () => {
    const table = read(
      '12.5    roots             3   at joint\n23.54   offset joint\n\n31 ft   sag    5-7\n',
    );
    expect(told(table.rows, FT)).toEqual([
      [12.5, 'roots', 3, 3, 'at joint'],
      [23.54, 'offset-joint', undefined, undefined, ''],
      [31, 'sag', 5, 7, ''],
    ]);
    expect(table.problems).toEqual([]);
  });

  it('in metres with decimal commas, stretches and a recording', () => {
    const table = read(
      [
        'Distance (m);To;Observation;Clock position;Could not pass;Video;Comment',
        '7,18;9,02;sag;;;2:05;"full; then half"',
        '12,345;;Roots;10 to 2;yes;1:00:30;',
        '1.012,5;;End of run;;no;;',
      ].join('\n'),
      'ft',
    );
    expect(table.rows).toEqual([
      { line: 2, counter: 7.18, to: 9.02, seen: 'sag', passed: true, note: 'full; then half', videoAt: 125 },
      {
        line: 3,
        counter: 12.345,
        seen: 'roots',
        clock: { from: 10, to: 2 },
        passed: false,
        note: '',
        videoAt: 3630,
      },
      { line: 4, counter: 1012.5, seen: 'end-of-run', passed: true, note: '' },
    ]);
    expect(table).toMatchObject({ problems: [], unread: [], unit: 'm' });
    expect(table.columns).toEqual({ counter: 0, to: 1, seen: 2, clock: 3, blocked: 4, videoAt: 5, note: 6 });
  });

  it('with commas that nobody quoted in the last column', () => {
    expect(told(read('23.5,roots,3,heavy, flushed, better\n').rows, FT)).toEqual([
      [23.5, 'roots', 3, 3, 'heavy, flushed, better'],
    ]);
  });

  it('with titles above the header, its columns in another order, and the header again on the next page', () => {
    const header = 'No.,Defect,Clock,Counter (ft),Passed';
    const table = read(`Run A,,,,\n\n${header}\n1,Crack,12,23.5,Yes\n${header}\n2,Hole,6,30,No\n`, 'm');
    expect(told(table.rows, FT)).toEqual([
      [23.5, 'crack', 12, 12, ''],
      [30, 'hole', 6, 6, ''],
    ]);
    expect(table.rows.map(({ passed }) => passed)).toEqual([true, false]);
    expect(table.unread).toEqual([{ column: 0, text: 'No.' }]);
    expect(table.problems.map(({ line, code }) => [line, code])).toEqual([[1, 'above-header']]);
  });

  it('with numbered rows and no header', () => {
    expect(told(read('1\t23.5\troots\n2\t30\tsag\n').rows, FT)).toEqual([
      [23.5, 'roots', undefined, undefined, ''],
      [30, 'sag', undefined, undefined, ''],
    ]);
  });

  it('with a counter and remarks', () => {
    const table = read('Footage\tRemarks\n10\troots, heavy\n20\tSag\n30\tflushed here\n');
    expect(told(table.rows, FT)).toEqual([
      [10, 'roots', undefined, undefined, 'roots, heavy'],
      [20, 'sag', undefined, undefined, ''],
      [30, null, undefined, undefined, 'flushed here'],
    ]);
    expect(table.problems.map(({ line, code }) => [line, code])).toEqual([[4, 'unknown-thing-seen']]);
  });

  it('with counters alone', () => {
    expect(told(read('23.5\n30 ft\n').rows, FT).map(([counter, seen]) => [counter, seen])).toEqual([
      [23.5, null],
      [30, null],
    ]);
  });
});

describe('the unit of bare numbers', () => {
  it.each<[string, LengthStyle, LengthStyle, number]>([
    ['Footage', 'm', 'ft', 10 * FT],
    ['Distance (ft)', 'ft-in', 'ft-in', 10 * FT],
    ['reading_m', 'ft', 'm', 10],
    ['Counter, metres', 'ft', 'm', 10],
    ['Distance in feet', 'm', 'ft', 10 * FT],
    ['Counter [cm]', 'ft', 'cm', 0.1],
    ['At', 'm', 'm', 10],
    ['At', 'ft', 'ft', 10 * FT],
  ])('under %s in a site of %s is %s', (heading, asked, unit, metres) => {
    const table = read(`${heading}\tSeen\n10\tsag\n`, asked);
    expect(table.unit).toBe(unit);
    expect(table.rows[0]?.counter).toBeCloseTo(metres, 12);
  });

  it('is told by a cell that names its own', () => {
    const { rows } = read('Distance (m)\tSeen\n23.5 ft\tsag\n7180 mm\tsag\n');
    expect(rows.map(({ counter }) => counter)).toEqual([
      expect.closeTo(23.5 * FT, 12),
      expect.closeTo(7.18, 12),
    ]);
  });
});

describe('what cannot be read', () => {
  const HEADER = 'Counter,To,Seen,Clock,Passed,Video,Note\n';

  it.each<[string, string, number | null, string, boolean]>([
    ['a word for a number', 'abt 20,,sag,,,,', 0, 'not-a-length', false],
    ['a spreadsheet that failed', '#REF!,,sag,,,,', 0, 'not-a-length', false],
    ['a counter below nothing', '-3,,sag,,,,', 0, 'not-a-length', false],
    ['no counter', ',,sag,,,,', 0, 'counter-missing', false],
    ['a counter of ten miles', '52800,,sag,,,,', 0, 'counter-too-large', false],
    ['a far end before the near one', '20,18,sag,,,,', 1, 'to-before-from', true],
    ['a far end in words', '20,the tap,sag,,,,', 1, 'not-a-length', true],
    ['an unknown thing', '20,,gremlin,,,,', 2, 'unknown-thing-seen', true],
    ['nothing seen', '20,,,,,,', 2, 'seen-missing', true],
    ['a clock that has no such hour', '20,,sag,13,,,', 3, 'clock-not-read', true],
    ['a date that a spreadsheet made of 4-8', '20,,sag,8-Apr,,,', 3, 'clock-not-read', true],
    ['a cross that may be a tick', '20,,sag,,x,,', 4, 'passed-not-read', true],
    ['a recording of 75 seconds a minute', '20,,sag,,,1:75,', 5, 'video-time-not-read', true],
    ['a number in two cells', '7,18,9,02,sag,,', 0, 'number-cut-by-comma', false],
  ])('%s is %s', (_, row, column, code, rowKept) => {
    expect(problemsOf(`${HEADER}${row}\n`)).toContainEqual([2, column, code, rowKept]);
    expect(read(`${HEADER}${row}\n`).rows.length).toBe(rowKept ? 1 : 0);
  });

  it('carries why a length was refused, and what stood there', () => {
    const [problem] = read('Counter (m),Seen\n"1,234",sag\n').problems;
    expect(problem).toMatchObject({
      code: 'not-a-length',
      text: '1,234',
      because: { code: 'ambiguous-comma' },
    });
  });

  it('quotes the row where a cell is blank', () => {
    expect(read(`${HEADER},,sag,3,,,deep\n`).problems).toMatchObject([
      { code: 'counter-missing', text: 'sag 3 deep' },
    ]);
  });

  it('keeps the words of an unknown thing and an unread clock in the note', () => {
    const [row] = read('Counter,Seen,Clock,Note\n20,gremlin,top,shy\n').rows;
    expect(row).toMatchObject({ seen: null, note: 'gremlin; top; shy' });
  });

  it('says that the camera could not pass', () => {
    const table = read('20\tcannot pass\n');
    expect(table.rows).toMatchObject([{ seen: 'obstruction', passed: false }]);
  });

  it.each([
    ['nothing', '', 'no-rows'],
    ['blank rows', '\r\n \t \r\n,,,\r\n', 'no-rows'],
    ['words', 'a letter\nto a friend\n', 'no-counter-column'],
    ['a header without a counter', 'Seen\tClock\tNote\nsag\t3\twet\n', 'no-counter-column'],
    ['two columns of numbers before what was seen', '7\t18\troots\n9\t20\tsag\n', 'two-counter-columns'],
    ['decimal commas between commas', '7,18,roots\n9,02,sag\n', 'two-counter-columns'],
    ['decimal commas that count from 1', '1,18,roots\n2,02,sag\n', 'two-counter-columns'],
  ])('%s gives no reading, but %s', (_, text, code) => {
    expect(read(text, 'm')).toMatchObject({ rows: [], problems: [{ code }] });
  });

  it('is refused above two million characters, and read up to 5,000 rows', () => {
    expect(read('1'.repeat(2_000_001))).toMatchObject({ rows: [], problems: [{ code: 'text-too-long' }] });
    const long = read(`Counter\tSeen\n${'20\tsag\n'.repeat(5001)}`);
    expect(long.rows.length).toBe(5000);
    expect(long.problems).toMatchObject([{ line: 5002, code: 'too-many-rows' }]);
    expect(problemsOf(`Counter\tNote\n20\t${'x'.repeat(2001)}\n`)).toEqual([[2, 1, 'cell-too-long', false]]);
    expect(problemsOf('Counter\tNote\tSeen\n20\t\tsag\tmore\n')).toEqual([
      [2, null, 'too-many-cells', false],
    ]);
  });
});

describe('the table of marks that this program writes', () => {
  it('comes back as its readings', () => {
    const { site, derived } = rearAlley((raw) => {
      for (const run of raw.runs) for (const reading of run.readings) reading.note = '=1+1, "wet"\nand cold';
    });
    const table = read(marksCsv(site, derived, fitRuns(site, derived), en));
    expect(table.problems).toEqual([]);
    expect(table.rows.length).toBeGreaterThan(10);
    for (const [i, { reading }] of derived.marks.entries()) {
      const { from, to = from } = reading.clock ?? {};
      expect(table.rows[i]).toMatchObject({ seen: reading.seen, passed: reading.passed, note: reading.note });
      expect(table.rows[i]?.counter).toBeCloseTo(reading.counter, 3);
      expect(table.rows[i]?.clock).toEqual(from === undefined ? undefined : { from, to });
    }
  });
});
