import { distance, type Point } from '@footmark/geometry';
import { type FoundWhere, placeOfTapes, refKey, type Ties } from '@footmark/site';
import { useState } from 'react';
import { LengthField } from '../controls/unitFields';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './found.module.css';

type Props = {
  readonly ties: Ties;
  /** Of the two places that tapes give, the one nearer to this is meant. */
  readonly near: Point;
  readonly where: FoundWhere | undefined;
  readonly onChange: (where: FoundWhere) => void;
};

/** Two tapes to what was found, from the points that its paint was taped from. */
export function TapesFields({ ties, near, where, onChange }: Props) {
  const site = useSite();
  const { points } = useDerived();
  const known = where?.by === 'tapes' ? where.tapes : [];
  const [pulled, setPulled] = useState<readonly (number | undefined)[]>([
    known[0]?.distance,
    known[1]?.distance,
  ]);
  const meet = (lengths: readonly (number | undefined)[]): FoundWhere | null => {
    const tapes = ties.pair.flatMap(({ from }, i) => {
      const length = lengths[i];
      return length === undefined || length <= 0 ? [] : [{ from: from.ref, distance: length }];
    });
    if (tapes.length < 2) return null;
    const sides = (['left', 'right'] as const).flatMap((side) => {
      const at = placeOfTapes(site, { tapes, side }, (ref) => points.get(refKey(ref))?.at);
      return at === null ? [] : [{ side, off: distance(at, near) }];
    });
    const [nearest] = sides.sort((a, b) => a.off - b.off);
    return nearest === undefined ? null : { by: 'tapes', tapes, side: nearest.side };
  };
  const set = (index: number, length: number | undefined) => {
    const next = pulled.with(index, length);
    setPulled(next);
    const found = meet(next);
    if (found !== null) onChange(found);
  };
  const apart = pulled.every((length) => length !== undefined) && meet(pulled) === null;
  return (
    <div className={styles.taped}>
      {ties.pair.map(({ from }, i) => (
        <LengthField
          key={from.key}
          label={words.crew.tapeFromText(from, site)}
          value={pulled[i]}
          onChange={(length) => set(i, length)}
        />
      ))}
      {apart ? <p role="alert">{words.crew.label('tapes-do-not-meet')}</p> : null}
    </div>
  );
}
