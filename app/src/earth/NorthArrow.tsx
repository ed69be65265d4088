import { useDerived } from '../session/siteSession';
import styles from './NorthArrow.module.css';

/** True north on the plan: a solid arrow where it is known, a dashed one where up is only taken for it. */
export function NorthArrow() {
  const { northAzimuth, known } = useDerived().frame;
  // up on the plan looks along `northAzimuth`, so north lies as far to the left of up
  const turn = (-northAzimuth * 180) / Math.PI;
  return (
    <div className={styles.north} data-known={known}>
      <svg viewBox="-28 -28 56 56">
        <title>{known ? 'North' : 'North, assumed'}</title>
        <g transform={`rotate(${turn})`}>
          <path d="M0 -25 7 3 0 -2 -7 3Z" />
          <text y="21" textAnchor="middle">
            N
          </text>
        </g>
      </svg>
      {known ? null : <span>assumed</span>}
    </div>
  );
}
