import type { MarkState, ObservationKind } from '@footmark/site';
import { memo } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { currentSite, derivedFrom } from '../session/siteSession';
import { words } from '../words';
import styles from './marks.module.css';
import { StateBadge } from './StateBadge';
import { showMark } from './showMark';

type Props = {
  readonly reading: string;
  readonly label: string;
  readonly seen: ObservationKind;
  /** The tapes that find it, or why there are none. */
  readonly place: string;
  /** On whose land it is, where that is not the lot; else empty. */
  readonly land: string;
  /** The hole that is sure to find it; empty while it is not known. */
  readonly hole: string;
  /** How far it has come; null where it has no place. */
  readonly state: MarkState | null;
};

/** A mark in a list: what was seen, how far it has come, its tapes, and its hole. Marks are made anew with each edit, so a row has only what it shows. */
export const MarkRow = memo(function MarkRow({ reading, label, seen, place, land, hole, state }: Props) {
  return (
    <Button className={cards.row ?? ''} onPress={() => showMarkOf(reading)}>
      <span className={cards.paint}>{label}</span>
      <span className={cards.grow}>
        {words.observationName(seen)}
        <small>{place}</small>
        {land === '' ? null : <small className={styles.land}>{land}</small>}
      </span>
      {state === null ? null : (
        <span className={styles.rowSize}>
          <span className={styles.rowHole}>{hole}</span>
          <small>
            <StateBadge state={state} />
          </small>
        </span>
      )}
    </Button>
  );
});

function showMarkOf(reading: string): void {
  const mark = derivedFrom(currentSite()).marks.find((m) => m.reading.id === reading);
  if (mark !== undefined) showMark(mark);
}
