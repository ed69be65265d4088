import type { Dice } from '../../random/dice';
import type { Mutator } from '../reader';
import { below, MOST_BYTES, upTo } from './bytes';
import { extremeNumbers, hostileTexts } from './hostile';
import { joinedWithin, onText } from './texts';

/** A mutation of rows of cells, whatever parts the cells. */
function onCells(change: (rows: string[][], dice: Dice) => void): Mutator {
  return onText((text, dice) => {
    const separator = [';', '\t', ','].find((s) => text.includes(s)) ?? ',';
    const rows = text.split('\n').map((line) => line.split(separator));
    change(rows, dice);
    const written = dice.next() < 0.1 ? dice.pick([';', '\t', ',', '|', '  ']) : separator;
    return joinedWithin(MOST_BYTES, rows, '\n', (row) => row.join(written));
  });
}

const CELLS = [
  ...extremeNumbers,
  ...hostileTexts,
  '"a',
  '"a""b"',
  '"a\nb"',
  'a"b',
  `6' 2"`,
  '12 ft 3 in',
  '1.234,5',
  '1,234.5',
  "3 o'clock",
  '10:15',
  '99:99:99',
  'Total',
  'roots',
  'yes',
  '# P,N,E,Z,D',
];

const otherCell = onCells((rows, dice) => {
  const row = dice.pick(rows);
  row[below(dice, row.length)] = dice.pick(CELLS);
});

const column = onCells((rows, dice) => {
  const at = below(dice, 6);
  const kind = dice.next();
  for (const row of rows) {
    if (kind < 0.4) row.splice(at, 1);
    else if (kind < 0.7) row.splice(at, 0, row[at] ?? '');
    else row.splice(at, 0, dice.pick(CELLS));
  }
});

const HEADINGS =
  'P,N,E,Z,D,point,northing,easting,elevation,description,lat,lon,latitude,longitude,northing_m,easting_us_ft,x,y,id,counter,feet,to,seen,clock,passed,blocked,note,video'.split(
    ',',
  );

const heading = onCells((rows, dice) => {
  const [first = []] = rows;
  if (dice.next() < 0.3) rows.unshift(Array.from({ length: 1 + below(dice, 8) }, () => dice.pick(HEADINGS)));
  else if (first.length > 0) first[below(dice, first.length)] = dice.pick(HEADINGS);
});

const rowAgain = onCells((rows, dice) => {
  const at = below(dice, rows.length);
  const row = rows[at] ?? [];
  rows.splice(at, 0, ...Array.from({ length: upTo(dice, 6000) }, () => [...row]));
});

const wide = onCells((rows, dice) => {
  const row = dice.pick(rows);
  row.push(...new Array<string>(upTo(dice, 5000)).fill(dice.pick(CELLS)));
});

const comment = onCells((rows, dice) => {
  rows.splice(below(dice, rows.length), 0, [
    dice.pick(['#', '# P,N,E,Z,D', '# E,N', '#P , N , N', '# crew', '""', '   ', ';;;']),
  ]);
});

export const tableMutators: readonly Mutator[] = [
  otherCell,
  otherCell,
  otherCell,
  column,
  heading,
  rowAgain,
  wide,
  comment,
];
