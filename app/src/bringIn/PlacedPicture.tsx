import type { PlacedIncoming } from '@footmark/exchange';
import type { Point } from '@footmark/geometry';
import { useDerived } from '../session/siteSession';
import styles from './bringIn.module.css';

/** So many things are drawn: enough to see where they lie. */
const MOST_DRAWN = 1500;
const SIZE = 300;
const MARGIN = 12;

/** Where what comes in would lie beside what is there; as far as both are shown whole, to one scale. */
export function PlacedPicture({ placed }: { readonly placed: PlacedIncoming }) {
  const { features } = useDerived();
  const there = [...features.values()].map(({ outline, points, spec }) => ({
    points: outline.length > 0 ? outline : points,
    closed: spec.shape === 'area',
  }));
  const coming = placed.things
    .slice(0, MOST_DRAWN)
    .map(({ points, shape }) => ({ points, closed: shape === 'area' }));
  const all = [...there, ...coming].flatMap(({ points }) => points);
  if (all.length === 0) return null;
  const [minX, maxX] = span(all.map((p) => p.x));
  const [minY, maxY] = span(all.map((p) => p.y));
  const scale = (SIZE - 2 * MARGIN) / Math.max(maxX - minX, maxY - minY, 1);
  const at = (p: Point) => ({ x: MARGIN + (p.x - minX) * scale, y: SIZE - MARGIN - (p.y - minY) * scale });
  const path = ({ points, closed }: { points: readonly Point[]; closed: boolean }) => {
    const [first] = points;
    if (points.length === 1 && first !== undefined) {
      const { x, y } = at(first);
      return `M${x - 2.5} ${y}h5M${x} ${y - 2.5}v5`;
    }
    const trace = points.map((p) => `${at(p).x.toFixed(1)} ${at(p).y.toFixed(1)}`).join('L');
    return `M${trace}${closed ? 'Z' : ''}`;
  };
  return (
    <svg
      className={styles.picture}
      viewBox={`0 0 ${SIZE} ${SIZE}`}
      role="img"
      aria-label="Where it would lie"
    >
      <path className={styles.there} d={there.map(path).join('')} />
      <path className={styles.coming} d={coming.map(path).join('')} />
    </svg>
  );
}

function span(values: readonly number[]): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) [least, most] = [Math.min(least, value), Math.max(most, value)];
  return [least, most];
}
