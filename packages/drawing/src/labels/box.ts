/** A text's box on paper, mm: half sizes along the unit vector (ux, uy) and square to it. */
export type Box = Readonly<{ x: number; y: number; ux: number; uy: number; halfW: number; halfH: number }>;

/** A straight piece from a to b, mm. */
export type Segment = Readonly<{ ax: number; ay: number; bx: number; by: number }>;

/** Half extents of the box's upright hull. */
export function hullOf(box: Box): Readonly<{ x: number; y: number }> {
  const c = Math.abs(box.ux);
  const s = Math.abs(box.uy);
  return { x: box.halfW * c + box.halfH * s, y: box.halfW * s + box.halfH * c };
}

// The tests below run some hundred times for each label: they make no objects and leave at the first no.

/** Whether two boxes overlap by more than rounding; boxes that touch do not. Separating axes, any text on collision. */
export function boxesOverlap(a: Box, b: Box): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
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
  const dx = x - box.x;
  const dy = y - box.y;
  const along = Math.max(0, Math.abs(dx * box.ux + dy * box.uy) - box.halfW);
  const across = Math.max(0, Math.abs(dy * box.ux - dx * box.uy) - box.halfH);
  return along * along + across * across < (radius - TOUCH_MM) * Math.abs(radius - TOUCH_MM);
}

/** Whether a segment runs through a box. Liang and Barsky's clipping in the box's own axes. */
export function segmentMeetsBox(ax: number, ay: number, bx: number, by: number, box: Box): boolean {
  const px = ax - box.x;
  const py = ay - box.y;
  const qx = bx - box.x;
  const qy = by - box.y;
  const halfW = box.halfW - TOUCH_MM;
  const halfH = box.halfH - TOUCH_MM;
  const p = px * box.ux + py * box.uy;
  const q = qx * box.ux + qy * box.uy;
  if ((p >= halfW && q >= halfW) || (p <= -halfW && q <= -halfW)) return false;
  const r = py * box.ux - px * box.uy;
  const s = qy * box.ux - qx * box.uy;
  if ((r >= halfH && s >= halfH) || (r <= -halfH && s <= -halfH)) return false;
  let enter = 0;
  let leave = 1;
  if (q !== p) {
    const t1 = (-halfW - p) / (q - p);
    const t2 = (halfW - p) / (q - p);
    enter = Math.max(enter, Math.min(t1, t2));
    leave = Math.min(leave, Math.max(t1, t2));
  }
  if (s !== r) {
    const t1 = (-halfH - r) / (s - r);
    const t2 = (halfH - r) / (s - r);
    enter = Math.max(enter, Math.min(t1, t2));
    leave = Math.min(leave, Math.max(t1, t2));
  }
  return enter < leave;
}

/** Whether a segment comes nearer to a point than a radius. */
export function segmentMeetsDisc(s: Segment, x: number, y: number, radius: number): boolean {
  const dx = s.bx - s.ax;
  const dy = s.by - s.ay;
  const length2 = dx * dx + dy * dy;
  const t = length2 > 0 ? ((x - s.ax) * dx + (y - s.ay) * dy) / length2 : 0;
  const at = Math.min(1, Math.max(0, t));
  return Math.hypot(s.ax + at * dx - x, s.ay + at * dy - y) < radius - TOUCH_MM;
}

/** Whether two segments cross between their ends; segments that only touch do not. */
export function segmentsCross(p: Segment, q: Segment): boolean {
  return (
    turn(p, q.ax, q.ay) * turn(p, q.bx, q.by) < -TOUCH_MM &&
    turn(q, p.ax, p.ay) * turn(q, p.bx, p.by) < -TOUCH_MM
  );
}

function turn(s: Segment, x: number, y: number): number {
  return (s.bx - s.ax) * (y - s.ay) - (s.by - s.ay) * (x - s.ax);
}
