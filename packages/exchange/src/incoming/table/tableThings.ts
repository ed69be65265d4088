import { fail, ok, type Result } from '@footmark/geometry';
import { type Collector, collector } from '../collector';
import { decimalNumber } from '../decimalNumber';
import type { IncomingOrder, IncomingPoint } from '../incoming';
import { isTableOrder } from './pointTable';

/**
 * The points of a table's rows once it is known which column is what. A row without two numbers there is left out and counted. Coordinates come out
 * easting first; the name is the description, else the point's number.
 */
export function tableThings(
  rows: readonly (readonly string[])[],
  order: IncomingOrder,
): Result<Pick<Collector, 'things' | 'notes'>, 'not-an-order'> {
  if (!isTableOrder(order)) return fail('not-an-order');
  const found = collector();
  const column = (letter: string) => order.indexOf(letter);
  const cell = (row: readonly string[], letter: string) => row[column(letter)]?.trim() ?? '';
  for (const row of rows) {
    const height = decimalNumber(cell(row, 'Z'));
    const point: IncomingPoint = {
      first: decimalNumber(cell(row, 'E')),
      second: decimalNumber(cell(row, 'N')),
      height: Number.isFinite(height) ? height : null,
    };
    if (!Number.isFinite(point.first) || !Number.isFinite(point.second)) {
      found.leaveOut('rows-left-out');
      continue;
    }
    const name = [cell(row, 'D'), cell(row, 'P')].find((text) => text !== '') ?? '';
    if (!found.add({ name, layer: '', shape: 'point', points: [point] })) break;
  }
  return ok(found);
}
