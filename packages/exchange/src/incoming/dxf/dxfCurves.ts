type XY = { readonly x: number; readonly y: number };

/** Arcs are given as chords of so many radians at the most: 0.1 % of the radius from the arc. */
const CHORD_RAD = Math.PI / 36;

/** Points of an arc from one angle (rad) to another, counterclockwise, both ends included. */
export function arcPoints(centre: XY, radius: number, from: number, to: number): readonly XY[] {
  const whole = 2 * Math.PI;
  const sweep = (((to - from) % whole) + whole) % whole || whole;
  return sweptPoints(centre, radius, from, sweep);
}

/** A whole circle, its first point not again at the end. */
export function circlePoints(centre: XY, radius: number): readonly XY[] {
  return sweptPoints(centre, radius, 0, 2 * Math.PI).slice(0, -1);
}

/**
 * The points from `from` to `to` where the leg between them has a bulge, the tangent of a quarter of its sweep, left negative; `from` left out, `to`
 * included.
 */
export function bulgePoints(from: XY, to: XY, bulge: number): readonly XY[] {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  if (bulge === 0 || chord === 0 || !Number.isFinite(bulge)) return [to];
  const sweep = 4 * Math.atan(bulge);
  // from the middle of the chord to the centre, left of its direction: half the chord over the tangent of half the sweep
  const out = chord / 2 / Math.tan(sweep / 2);
  const [ux, uy] = [(to.x - from.x) / chord, (to.y - from.y) / chord];
  const centre = { x: (from.x + to.x) / 2 - uy * out, y: (from.y + to.y) / 2 + ux * out };
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return [...sweptPoints(centre, radius, start, sweep).slice(1, -1), to];
}

function sweptPoints(centre: XY, radius: number, start: number, sweep: number): readonly XY[] {
  const steps = Math.max(1, Math.ceil(Math.abs(sweep) / CHORD_RAD));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = start + (sweep * i) / steps;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}
