import type { SearchZone } from '@footmark/site';
import { words } from '../words';
import styles from './marks.module.css';

/** Width (px) of a bar that stands for the whole. */
const WHOLE_PX = 44;

/** A share that prints as nothing is left out. */
const LEAST_SHARE = 0.005;

type MakeUp = SearchZone['makeUp'];
type Way = 'along' | 'across';

/** From what a zone's size comes: each source's share of it, along the pipe and across. */
export function ZoneMakeUp({ makeUp }: { readonly makeUp: MakeUp }) {
  const shares = { along: sharesOf(makeUp, 'along'), across: sharesOf(makeUp, 'across') };
  const rows = makeUp
    .map(({ source }, i) => ({ source, along: shares.along[i] ?? 0, across: shares.across[i] ?? 0 }))
    .filter(({ along, across }) => Math.max(along, across) >= LEAST_SHARE)
    .sort((a, b) => b.along + b.across - a.along - a.across);
  return (
    <table className={styles.makeUp}>
      <thead>
        <tr>
          <th scope="col">It comes from</th>
          <th scope="col">along</th>
          <th scope="col">across</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ source, along, across }) => (
          <tr key={source}>
            <td>{words.zoneSourceName(source)}</td>
            <td>
              <Share share={along} />
            </td>
            <td>
              <Share share={across} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Share({ share }: { readonly share: number }) {
  if (share < LEAST_SHARE) return null;
  return (
    <span className={styles.share}>
      <i style={{ width: Math.max(1, share * WHOLE_PX) }} />
      <small>{Math.round(100 * share)} %</small>
    </span>
  );
}

/** Each source's share of the sum of squares. */
function sharesOf(makeUp: MakeUp, way: Way): readonly number[] {
  const squares = makeUp.map((part) => part[way] ** 2);
  const whole = squares.reduce((sum, square) => sum + square, 0);
  return squares.map((square) => (whole === 0 ? 0 : square / whole));
}
