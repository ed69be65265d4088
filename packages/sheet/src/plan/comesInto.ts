import type { Bounds, Primitive } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';

/** Whether any of a primitive's lines, or its place, comes into a box; what only surrounds the box does not. */
export function comesInto(of: Primitive, box: Bounds): boolean {
  switch (of.kind) {
    case 'symbol':
      return isIn(of.at, box);
    case 'circle': {
      const { centre, radius } = of;
      const nearest = {
        x: Math.min(Math.max(centre.x, box.minX), box.maxX),
        y: Math.min(Math.max(centre.y, box.minY), box.maxY),
      };
      return Math.hypot(nearest.x - centre.x, nearest.y - centre.y) <= radius;
    }
    default: {
      const { points, closed } = of;
      const [first] = points;
      const course = closed && first !== undefined ? [...points, first] : points;
      return course.some((to, i) => crosses(course[i - 1] ?? to, to, box));
    }
  }
}

function isIn({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}

/** Liang and Barsky's clipping: what is left of a segment between the four sides. */
function crosses(a: Point, b: Point, { minX, minY, maxX, maxY }: Bounds): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [from, to] = [0, 1];
  const sides = [
    [-dx, a.x - minX],
    [dx, maxX - a.x],
    [-dy, a.y - minY],
    [dy, maxY - a.y],
  ] as const;
  for (const [into, room] of sides) {
    if (into === 0) {
      if (room < 0) return false;
      continue;
    }
    const t = room / into;
    if (into < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
    if (from > to) return false;
  }
  return true;
}
