import { setNorth } from '@footmark/site';
import { type PointerEvent, useRef, useState } from 'react';
import { edit, useDerived } from '../session/siteSession';
import { toggleLeaf } from '../session/workbench';
import styles from './NorthArrow.module.css';

/** A press that turns the arrow by less (degrees) is a tap. */
const STILL_DEG = 3;

/**
 * True north on the plan: a solid arrow where it is known, a dashed one where up is only taken for it. Turned by hand it says where
 * north is, to a degree; a tap opens the ways to say it better.
 */
export function NorthArrow() {
  const { northAzimuth, known } = useDerived().frame;
  // up on the plan looks along `northAzimuth`, so north lies as far to the left of up
  const turn = (-northAzimuth * 180) / Math.PI;
  const [hand, setHand] = useState<{ readonly from: number; readonly to: number } | null>(null);
  const turned = hand === null ? 0 : hand.to - hand.from;
  const shown = turn + turned;

  // a click follows the end of a turn, and is none
  const justTurned = useRef(false);

  const begin = (event: PointerEvent<HTMLButtonElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    const angle = angleOf(event);
    justTurned.current = false;
    setHand({ from: angle, to: angle });
  };
  const end = () => {
    setHand(null);
    justTurned.current = Math.abs(turned) >= STILL_DEG;
    if (!justTurned.current) return;
    const degrees = ((-Math.round(shown) % 360) + 360) % 360;
    edit('Turn north', (site) =>
      setNorth(site, { north: { by: 'typed', azimuth: (degrees * Math.PI) / 180 } }),
    );
  };
  return (
    <button
      type="button"
      className={styles.north}
      data-known={known}
      aria-label={known ? 'North. Opens how it is known' : 'North, assumed. Opens how to say where it is'}
      onPointerDown={begin}
      onPointerMove={(event) => hand !== null && setHand({ ...hand, to: angleOf(event) })}
      onPointerUp={end}
      onPointerCancel={() => setHand(null)}
      onClick={() => justTurned.current || toggleLeaf('north')}
    >
      <svg viewBox="-28 -28 56 56" aria-hidden="true">
        <g transform={`rotate(${shown})`}>
          <path d="M0 -25 7 3 0 -2 -7 3Z" />
          {/* drawn, or a reader that spells would take it for a part of the name */}
          <path className={styles.letter} d="M-4 21V10L4 21V10" />
        </g>
      </svg>
      {known ? null : <span>assumed</span>}
    </button>
  );
}

/** Where the pointer is about the arrow's middle, degrees clockwise from up. */
function angleOf(event: PointerEvent<HTMLButtonElement>): number {
  const box = event.currentTarget.getBoundingClientRect();
  const x = event.clientX - (box.left + box.width / 2);
  const y = event.clientY - (box.top + box.width / 2);
  return (Math.atan2(x, -y) * 180) / Math.PI;
}
