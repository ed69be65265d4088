import { type Point, scale, subtract } from '@footmark/geometry';

/** How far (m) the ends of a right-of-way line are carried on straight: past all that is drawn on a yard. */
const CARRIED_M = 1000;

/** A right-of-way line goes on where it is not drawn any more. */
export function carriedOn(line: readonly Point[]): readonly Point[] {
  const [first, second] = line;
  const [last, before] = [line.at(-1), line.at(-2)];
  if (first === undefined || second === undefined || last === undefined || before === undefined) return line;
  return [onFrom(second, first), ...line, onFrom(before, last)];
}

function onFrom(from: Point, to: Point): Point {
  const leg = subtract(to, from);
  const along = scale(leg, CARRIED_M / Math.hypot(leg.x, leg.y));
  return { x: to.x + along.x, y: to.y + along.y };
}

/** Whether the straight way between two places passes the line an odd number of times: they lie on either side of it. */
export function liesBeyond(line: readonly Point[], from: Point, to: Point): boolean {
  const way = subtract(to, from);
  const sideOf = (p: Point) => way.x * (p.y - from.y) - way.y * (p.x - from.x);
  const squared = way.x ** 2 + way.y ** 2;
  let passed = 0;
  for (let i = 0; i + 1 < line.length; i++) {
    const [c, d] = [line[i], line[i + 1]];
    if (c === undefined || d === undefined) continue;
    const [onC, onD] = [sideOf(c), sideOf(d)];
    if (onC > 0 === onD > 0) continue;
    const t = onC / (onC - onD);
    const x = c.x + t * (d.x - c.x) - from.x;
    const y = c.y + t * (d.y - c.y) - from.y;
    const share = (x * way.x + y * way.y) / squared;
    if (share > 0 && share < 1) passed++;
  }
  return passed % 2 === 1;
}
