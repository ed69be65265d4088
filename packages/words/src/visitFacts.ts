import { type SeverityWord, type StillThere, type VisitThing, WITHIN_95 } from '@footmark/site';

/** How bad a thing was said to be on a visit, by the first of its marks that says so. */
export function severityOf({ marks }: VisitThing): SeverityWord | null {
  const [first] = marks.flatMap((m) => m.reading.severity ?? []);
  return first ?? null;
}

/** Whether the errors of the counters explain how far apart two visits have a thing. */
export function withinErrors({ moved, sigma }: StillThere): boolean {
  return Math.abs(moved) <= WITHIN_95 * sigma;
}

/** The midnight with which a day of the calendar, written `2025-03-09`, begins in UTC; print it in that time zone. */
export function dayOf(date: string): Date {
  return new Date(`${date}T00:00:00Z`);
}
