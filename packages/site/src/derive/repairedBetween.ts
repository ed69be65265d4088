import type { Site } from '../document/site';

/** Whether the pipe was repaired between two visits, as far as purposes and dates tell; null is the visit of runs that name none. */
export function repairedBetween(
  { visits }: Pick<Site, 'visits'>,
  first: string | null,
  second: string | null,
): boolean {
  if (first === second) return false;
  const [a, b] = [first, second].map((id) => visits.find((v) => v.id === id));
  if (a?.purpose === 'after-repair' || b?.purpose === 'after-repair') return true;
  const [early = '', late = ''] = [a?.date ?? '', b?.date ?? ''].sort();
  if (early === '') return false;
  return visits.some(({ purpose, date = '' }) => purpose === 'after-repair' && date > early && date <= late);
}
