import { fail, ok, type Result } from '@footmark/geometry';
import { type Grid, type GridSystem, type GridUnit, openGrid } from '@footmark/grid';
import type { IncomingQuestion, PlacingProblem } from '@footmark/words';
import type { Incoming, IncomingOrder } from '../incoming';
import { isTableOrder } from '../table/pointTable';

/** What people say of a file that came in; plain data. What is said here holds, also against the file. */
export type IncomingAnswers = {
  /** Degrees of WGS 84, the plan's own coordinates, or a grid. */
  readonly coordinates?:
    | { readonly is: 'earth' }
    | { readonly is: 'site' }
    | { readonly is: 'grid'; readonly system: GridSystem };
  readonly unit?: GridUnit;
  readonly order?: IncomingOrder;
};

/** How its coordinates are to be taken, once nothing is open. */
export type IncomingFrame = {
  readonly coordinates:
    | { readonly is: 'earth' }
    | { readonly is: 'site'; readonly unit: GridUnit }
    | { readonly is: 'grid'; readonly unit: GridUnit; readonly grid: Grid };
  readonly order: IncomingOrder;
};

/** The questions that a file leaves open after what was answered. The name of a system alone answers none. */
export function openQuestions(incoming: Incoming, answers: IncomingAnswers): readonly IncomingQuestion[] {
  const { coordinates, unit, order } = known(incoming, answers);
  const open: IncomingQuestion[] = [];
  if (coordinates === null) open.push('coordinates');
  if (coordinates?.is !== 'earth' && unit === null) open.push('unit');
  if (order === null) open.push('order');
  return open;
}

/** How the coordinates are to be taken; `questions-open` while something is. */
export function incomingFrame(
  incoming: Incoming,
  answers: IncomingAnswers,
): Result<IncomingFrame, PlacingProblem> {
  const { coordinates, unit, order } = known(incoming, answers);
  if (coordinates === null || order === null) return fail('questions-open');
  if (coordinates.is === 'earth') return ok({ coordinates, order });
  if (unit === null) return fail('questions-open');
  if (coordinates.is === 'site') return ok({ coordinates: { is: 'site', unit }, order });
  const grid = openGrid(coordinates.system);
  return grid.ok ? ok({ coordinates: { is: 'grid', unit, grid: grid.value }, order }) : fail('grid-not-read');
}

/** What the answers say, else the file; an order must serve. */
function known({ says, format }: Incoming, answers: IncomingAnswers) {
  const order = answers.order ?? says.order;
  const serves =
    order !== null && (format === 'table' ? isTableOrder(order) : order === 'EN' || order === 'NE');
  return {
    coordinates: answers.coordinates ?? (says.coordinates?.is === 'earth' ? says.coordinates : null),
    unit: answers.unit ?? says.unit,
    order: serves ? order : null,
  };
}
