import { parseReadingTable } from '@footmark/exchange';
import { type LengthStyle, lengthInputText, type ObservationKind, observationKindIds } from '@footmark/site';
import { en } from '@footmark/words';
import { parse as csvParse } from 'csv-parse/sync';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';

const read = (text: string, unit: LengthStyle = 'ft') =>
  parseReadingTable(text, { unit, names: en.observationName });

type Given = Readonly<{
  counter: number;
  seen: ObservationKind;
  hour: number | null;
  passed: boolean;
  note: string;
}>;

/** A note's later lines do not begin as a number does: such a line in quotes may be a row after a stray quote. */
const note = fc
  .string({ unit: 'grapheme', maxLength: 60 })
  .map((text) => text.replaceAll('\r', '\n').trim())
  .filter(
    (text) => !/\n\s*[-+.,'"\p{N}]/u.test(text) && !/^'[=+\-@]/.test(text) && !text.startsWith('\uFEFF'),
  );

const given: fc.Arbitrary<Given> = fc.record({
  counter: fc.integer({ min: 0, max: 30_000 }).map((count) => count / 100),
  seen: fc.constantFrom(...observationKindIds),
  hour: fc.option(fc.integer({ min: 1, max: 12 })),
  passed: fc.boolean(),
  note,
});

const cells = ({ counter, seen, hour, passed, note }: Given, unit: LengthStyle): readonly string[] => [
  lengthInputText(counter, unit),
  en.observationName(seen),
  hour === null ? '' : `${hour} o'clock`,
  en.yesNo(passed),
  note,
];

const HEADINGS = ['Counter', 'Seen', 'Clock', 'Passed', 'Note'];

describe('a table that another program wrote (papaparse)', () => {
  it.each([
    ['\t', '\r\n'],
    ['\t', '\n'],
    [';', '\r\n'],
    [',', '\n'],
    [',', '\r'],
  ])('comes back whole with %j between cells and %j after rows', (delimiter, newline) => {
    fc.assert(
      fc.property(
        fc.array(given, { minLength: 1, maxLength: 12 }),
        fc.constantFrom<LengthStyle>('ft-in', 'ft', 'm'),
        fc.boolean(),
        (list, unit, quotes) => {
          const data = [HEADINGS, ...list.map((one) => [...cells(one, unit)])];
          const table = read(Papa.unparse(data, { delimiter, newline, quotes }), unit);
          expect(table.problems).toEqual([]);
          expect(table.rows.map(({ line: _, counter, ...row }) => row)).toEqual(
            list.map(({ seen, hour, passed, note }) => ({
              seen,
              ...(hour !== null && { clock: { from: hour, to: hour } }),
              passed,
              note,
            })),
          );
          // `lengthInputText` writes to 1/16 in or to a tenth of a millimetre, and half of that is lost.
          for (const [i, { counter }] of list.entries())
            expect(Math.abs((table.rows[i]?.counter ?? Number.NaN) - counter)).toBeLessThan(
              0.0254 / 32 + 1e-9,
            );
        },
      ),
    );
  });

  it('has the notes that a strict reader (csv-parse) finds in it', () => {
    fc.assert(
      fc.property(fc.array(given, { minLength: 1, maxLength: 12 }), (list) => {
        const text = Papa.unparse([HEADINGS, ...list.map((one) => [...cells(one, 'm')])]);
        const records: Record<string, string>[] = csvParse(text, { columns: true });
        expect(read(text).rows.map(({ note }) => note)).toEqual(records.map(({ Note }) => Note));
      }),
    );
  });
});

describe('any text', () => {
  /** What tables are made of, so that texts come near to being one. */
  const nearTable = fc
    .array(
      fc.oneof(
        fc.constantFrom('\t', ',', ';', '   ', '"', '""', '\n', '\r\n', '\r', '\uFEFF', ' '),
        fc.constantFrom(`23' 6"`, '7,18', '12.5 ft', '3', '4-8', '1.012,5', '-', '1e9', '٣', '2:05', '1/0'),
        fc.constantFrom(
          'Footage',
          'Seen',
          'Note',
          'To',
          'At',
          'Clock',
          'roots',
          'sag, deep',
          'Total',
          'no',
          'x',
        ),
        fc.string({ unit: 'binary', maxLength: 6 }),
      ),
      { maxLength: 60 },
    )
    .map((parts) => parts.join(''));

  it('is read without a throw, into readings a run can hold, in the order of its lines', () => {
    fc.assert(
      fc.property(
        fc.oneof(nearTable, fc.string({ unit: 'binary', maxLength: 300 })),
        fc.constantFrom<LengthStyle>('ft-in', 'ft', 'm'),
        (text, unit) => {
          const table = read(text, unit);
          const lines = text.split(/\r\n|\n|\r/).length;
          const places = table.rows.map(({ line }) => line);
          expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
          for (const { line, counter, to, note } of table.rows) {
            expect(line).toBeLessThanOrEqual(lines);
            expect(counter).toBeGreaterThanOrEqual(0);
            expect(counter).toBeLessThanOrEqual(10_000);
            if (to !== undefined) expect(to).toBeGreaterThan(counter);
            expect(note.length).toBeLessThanOrEqual(5000);
          }
          const kept = new Set(places);
          for (const { line, rowKept, text: quoted } of table.problems) {
            expect(kept.has(line)).toBe(rowKept);
            expect(quoted.length).toBeLessThanOrEqual(200);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it.each(['\t', ';', ','])('between good rows with %j leaves them as they are', (delimiter) => {
    const write = (list: readonly Given[]) =>
      Papa.unparse(
        list.map((one) => [...cells(one, 'ft')]),
        { delimiter, newline: '\n' },
      );
    const plain = given.map((one) => ({ ...one, note: one.note.replaceAll('\n', ' ') }));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(plain, fc.oneof(nearTable, note)), { minLength: 3, maxLength: 12 }),
        (list) => {
          const header = `${HEADINGS.join(delimiter)}\n`;
          const good = read(header + write(list.map(([one]) => one))).rows;
          const mixed = read(header + list.map(([one, bad]) => `${write([one])}\n${bad}\n`).join('')).rows;
          expect(good.length).toBe(list.length);
          const bare = ({ line: _, ...row }: (typeof good)[number]) => JSON.stringify(row);
          let at = 0;
          for (const row of mixed)
            if (at < good.length && bare(row) === bare(good[at] as typeof row)) at += 1;
          expect(at).toBe(good.length);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('a text made to be slow', () => {
  const SIZE = 1_900_000;
  const fill = (part: string) => part.repeat(Math.floor(SIZE / part.length));

  it.each([
    ['open quotes', fill('"a\n')],
    ['open quotes in one line', fill('"a,')],
    ['doubled quotes', fill('"",')],
    ['a cell of quotes', fill('"')],
    ['quotes after separators', `1,roots,${fill('"""x,')}`],
    ['blank rows', fill('\n')],
    ['separators', fill(',')],
    ['spaces', fill(' ')],
    ['spaces before a word', `${fill(' ')}x`],
    ['dots', `Counter\tSeen\n${fill('.')}1x1\tsag`],
    ['rows of dots', `Counter\tSeen\n${fill(`${'.'.repeat(39)}x1\tsag\n`)}`],
    ['rows of long numbers', `Counter\tSeen\n${fill(`${'1 '.repeat(1000)}\tsag\n`)}`],
    ['wide rows of things', fill(`${'23.5,roots (,4-8,'.repeat(33)}\n`)],
    ['headings', fill(`${'could not pass,at,'.repeat(50)}\n`)],
    ['an open quote before many lines', `Counter\tSeen\n1\t"${fill('x\n')}`],
  ])('is read in time: %s', { timeout: 30_000 }, (_, text) => {
    const start = performance.now();
    read(text);
    // Linear work on two million characters takes some tenths of a second; squared, it takes hours.
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});
