import type { DerivedPath } from '@footmark/site';

/** A station that is not within a bend: a pipe is cut where it is straight. */
export function offBend({ line, length }: DerivedPath, station: number, to: 'before' | 'after'): number {
  for (const [i, element] of line.elements.entries()) {
    const [from, end] = [line.starts[i] ?? 0, line.starts[i + 1] ?? length];
    if (element.kind === 'arc' && station > from && station < end) return to === 'after' ? end : from;
  }
  return station;
}
