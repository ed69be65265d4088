import { tableMutators } from '../mutate/tables';
import { bytesOf } from '../reader';
import { ownFile } from '../soundFiles';
import { decimalsIn, incomingReader } from './incoming';

const rows = '1,10.5,20.25,3,nail\n2,11,21,3.1,"stake, north"\n3,12,,,\n4,NaN,1,1,x\n';
const small = [
  rows,
  `# P,N,E,Z,D\n${rows}`,
  `# crew\npoint;easting_m;northing_m;elevation;note\n${rows.replaceAll(',', ';')}`,
  'name\tlatitude\tlongitude\na\t45.6\t-31.2\nb\t45.6001\t-31.2\n',
  'N,E\r\n1e3,2e3\r\n-5,+6\r\n',
];

export const reader = incomingReader({
  name: 'CSV/PNEZD',
  format: 'table',
  seeds: () => [...small.map(bytesOf), ownFile('points')],
  mutators: tableMutators,
  count: (text, { says, rows: taken }) => {
    const lines = text
      .replace(/^\ufeff/, '')
      .split(/\r\n|\r|\n/)
      .filter((line) => line.trim() !== '' && !line.startsWith('#'));
    // the first may be headings, which say an order
    return says.order !== null && taken.length === lines.length - 1 ? taken.length : lines.length;
  },
  // things are made of the rows later
  numbers: (text) => decimalsIn(text),
});
