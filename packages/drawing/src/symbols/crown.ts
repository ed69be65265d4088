import type { Point } from '@footmark/geometry';

/** Lobes of a crown: fewer look like a flower, more like a cog. */
const FEWEST_LOBES = 9;
const MOST_LOBES = 60;
const POINTS_PER_LOBE = 12;
/** Share of its width that a lobe stands out by, and by which lobes lie deeper than others. */
const LOBE_DEPTH = 0.26;
const LOBE_VARIATION = 0.22;

/**
 * A tree's crown as a draughtsman draws it in plan: an irregular ring of lobes within `radius` of `centre`, both in one unit.
 * `lobe` is the width that a lobe should have. The same `seed` gives the same crown.
 */
export function crownOutline(centre: Point, radius: number, lobe: number, seed: number): readonly Point[] {
  const random = sequence(seed);
  const wanted = Math.round((2 * Math.PI * radius) / lobe);
  const count = Math.min(MOST_LOBES, Math.max(FEWEST_LOBES, wanted));
  const widths = Array.from({ length: count }, () => 0.6 + 0.8 * random());
  const whole = widths.reduce((sum, w) => sum + w, 0);
  const points: Point[] = [];
  let angle = 2 * Math.PI * random();
  for (const width of widths) {
    const sweep = (2 * Math.PI * width) / whole;
    const depth = LOBE_DEPTH * sweep * radius;
    const foot = radius - depth - LOBE_VARIATION * sweep * radius * random();
    for (let i = 0; i < POINTS_PER_LOBE; i += 1) {
      const t = i / POINTS_PER_LOBE;
      const r = foot + depth * Math.sin(Math.PI * t);
      points.push({
        x: centre.x + r * Math.sin(angle + sweep * t),
        y: centre.y + r * Math.cos(angle + sweep * t),
      });
    }
    angle += sweep;
  }
  return points;
}

/** Numbers in [0, 1) from a seed: a 32-bit linear congruential generator (Numerical Recipes' constants, from memory). */
function sequence(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A seed from a text, the same on every machine (FNV-1a). */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
