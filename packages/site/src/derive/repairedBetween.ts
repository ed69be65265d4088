import type { Site } from '../document/site';
import type { Visit } from '../document/visit';

/**
 * Whether the pipe was repaired between two visits, as far as purposes and dates tell; null is the visit of runs that name none. A visit
 * after a repair says that it was done before that visit. Where nothing tells which of the two was first, such a visit has the repair
 * between itself and any other.
 */
export function repairedBetween(
  { visits }: Pick<Site, 'visits'>,
  first: string | null,
  second: string | null,
): boolean {
  if (first === second) return false;
  const [a, b] = [first, second].map((id) => visits.find((v) => v.id === id));
  const [dayA, dayB] = [dayOf(a), dayOf(b)];
  if (dayA === null || dayB === null) return isAfterRepair(a) || isAfterRepair(b);
  const early = dayA < dayB ? a : dayB < dayA ? b : isAfterRepair(a) ? b : a;
  const [from, to] = dayA < dayB ? [dayA, dayB] : [dayB, dayA];
  return visits.some((visit) => {
    if (!isAfterRepair(visit) || visit.date === undefined || visit.date > to) return false;
    // looks on one day, of which one is after a repair, have it between them
    return visit.date > from || (visit.date === from && !isAfterRepair(early));
  });
}

function isAfterRepair(visit: Visit | undefined): boolean {
  return visit?.purpose === 'after-repair';
}

/** An ISO day, by which visits are in order; a first look without a date was before all others. Null where nothing tells. */
function dayOf(visit: Visit | undefined): string | null {
  return visit?.date ?? (visit?.purpose === 'first-look' ? '' : null);
}
