import { parseReadingTable, type ReadingTable } from '@footmark/exchange';
import type { LengthStyle } from '@footmark/site';
import { en, es } from '@footmark/words';
import { tableMutators } from '../mutate/tables';
import { bytesOf, type FuzzReader, inWords, textOf } from '../reader';
import { noNumberIn } from '../whole';

type Read = { readonly accepted: boolean; readonly tables: readonly ReadingTable[] };

const STYLES: readonly LengthStyle[] = ['ft-in', 'ft', 'm'];

const rows = [
  'Counter,Seen,Clock,Passed,Note',
  `12' 6",Cleanout,,yes,cap under turf`,
  '31.5,Roots,9 to 3,no,"fine, then a mass"',
  '44.25,Belly or standing water,,yes,',
  '58,Joint,12,yes,"two lines\nof a note"',
].join('\n');

const small = [
  rows,
  rows.replaceAll(',', '\t'),
  'Contador (m);Visto;Reloj;Bloqueado;Nota\n3,5;Raíces;9;sí;x\n7,25;Bajante;;no;\n',
  '10  roots\n20  joint\n30.5  tap\n',
  '12.5\n18.25\n44\n',
  'Job 12, page 1\n\nfeet,to,seen,video\n10,14,belly,00:03:10\n22,,crack,3:55\nfeet,to,seen,video\n30,,roots,4:10\n',
];

const lastLine = (text: string) => text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/).length;

/**
 * A table of readings as it is pasted. Partial: a number that is none or stands out of all bounds, two readings of one line, lines that do not go
 * upwards, and, where no cell is in quotes, a line with a figure that is neither read nor told of.
 */
export const reader: FuzzReader<Read> = {
  name: 'table of readings',
  seeds: () => [...small.map(bytesOf), bytesOf(`${rows}\n`.repeat(400))],
  mutators: tableMutators,
  read(input) {
    const text = textOf(input);
    const tables = STYLES.flatMap((unit) =>
      [en, es].map((words) => {
        const table = parseReadingTable(text, { unit, names: words.observationName });
        for (const problem of table.problems) inWords(words.tableProblemText(problem));
        return table;
      }),
    );
    return { accepted: tables.some((t) => t.rows.length > 0), tables };
  },
  judge(input, { tables }) {
    const text = textOf(input);
    for (const table of tables) {
      const wrong = tableWrong(table, text);
      if (wrong !== null) return wrong;
    }
    return null;
  },
};

const FARTHEST_M = 10_000;

function tableWrong({ rows, problems }: ReadingTable, text: string): string | null {
  const last = lastLine(text);
  let before = 0;
  for (const { line, counter, to, note, videoAt } of rows) {
    if (line <= before || line > last) return `a reading of line ${line} behind line ${before} of ${last}`;
    before = line;
    if (!(counter >= 0 && counter <= FARTHEST_M)) return `a counter of ${counter} m`;
    if (to !== undefined && !(to > counter && to <= FARTHEST_M)) return `up to ${to} m from ${counter} m`;
    if (videoAt !== undefined && !(videoAt >= 0 && videoAt <= 86_400)) return `${videoAt} s into a recording`;
    if (note.length > 5000) return `a note of ${note.length} characters`;
  }
  for (const { line } of problems) if (line < 1 || line > last) return `a problem on line ${line} of ${last}`;
  return noNumberIn(rows) ?? (text.includes('"') ? null : lineForgotten(rows, problems, text));
}

/** Where a plain number begins a line of a table that has been read, it is a reading, a problem, or in a heading that is said again. */
function lineForgotten(
  rows: ReadingTable['rows'],
  problems: ReadingTable['problems'],
  text: string,
): string | null {
  if (rows.length === 0 || problems.some(({ code }) => code === 'too-many-rows')) return null;
  const told = new Set([...rows, ...problems].map(({ line }) => line));
  const first = rows[0]?.line ?? 0;
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const forgotten = lines.findIndex(
    (line, i) => i + 1 > first && /^\d{1,3}(\.\d{1,2})?([,;\t]|$)/.test(line) && !told.has(i + 1),
  );
  return forgotten < 0 ? null : `line ${forgotten + 1} is neither read nor told of`;
}
