/** A text's box on paper, mm: half sizes along the unit vector (ux, uy) and square to it. */
export type Box = Readonly<{ x: number; y: number; ux: number; uy: number; halfW: number; halfH: number }>;

/** Half extents of the box's upright hull. */
export function hullOf(box: Box): Readonly<{ x: number; y: number }> {
  const [c, s] = [Math.abs(box.ux), Math.abs(box.uy)];
  return { x: box.halfW * c + box.halfH * s, y: box.halfW * s + box.halfH * c };
}

/** Whether two boxes overlap by more than rounding; boxes that touch do not. Separating axes, any text on collision. */
export function boxesOverlap(a: Box, b: Box): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const cos = Math.abs(a.ux * b.ux + a.uy * b.uy);
  const sin = Math.abs(a.ux * b.uy - a.uy * b.ux);
  return (
    Math.abs(dx * a.ux + dy * a.uy) < a.halfW + b.halfW * cos + b.halfH * sin - TOUCH_MM &&
    Math.abs(dy * a.ux - dx * a.uy) < a.halfH + b.halfW * sin + b.halfH * cos - TOUCH_MM &&
    Math.abs(dx * b.ux + dy * b.uy) < b.halfW + a.halfW * cos + a.halfH * sin - TOUCH_MM &&
    Math.abs(dy * b.ux - dx * b.uy) < b.halfH + a.halfW * sin + a.halfH * cos - TOUCH_MM
  );
}

/** Overlaps below this (mm) are rounding. */
const TOUCH_MM = 1e-6;

/** Whether a disc reaches into a box. */
export function discMeetsBox(x: number, y: number, radius: number, box: Box): boolean {
  const [dx, dy] = [x - box.x, y - box.y];
  const along = Math.max(0, Math.abs(dx * box.ux + dy * box.uy) - box.halfW);
  const across = Math.max(0, Math.abs(dy * box.ux - dx * box.uy) - box.halfH);
  return along * along + across * across < (radius - TOUCH_MM) * Math.abs(radius - TOUCH_MM);
}

/** Whether a segment runs through a box. Liang and Barsky's clipping in the box's own axes. */
export function segmentMeetsBox(ax: number, ay: number, bx: number, by: number, box: Box): boolean {
  const [px, py] = [ax - box.x, ay - box.y];
  const [qx, qy] = [bx - box.x, by - box.y];
  const [p, q] = [px * box.ux + py * box.uy, qx * box.ux + qy * box.uy];
  const [r, s] = [py * box.ux - px * box.uy, qy * box.ux - qx * box.uy];
  let [enter, leave] = [0, 1];
  for (const [from, to, half] of [
    [p, q, box.halfW - TOUCH_MM],
    [r, s, box.halfH - TOUCH_MM],
  ] as const) {
    const d = to - from;
    if (d === 0) {
      if (Math.abs(from) >= half) return false;
      continue;
    }
    const [t1, t2] = [(-half - from) / d, (half - from) / d];
    enter = Math.max(enter, Math.min(t1, t2));
    leave = Math.min(leave, Math.max(t1, t2));
  }
  return enter < leave;
}
