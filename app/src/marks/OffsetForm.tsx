import { type Mark, planAzimuth } from '@footmark/site';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { DirectionField } from '../earth/DirectionField';
import { useDerived } from '../session/siteSession';
import { notifyOfEdit } from '../session/workbench';
import { changeMark } from './changeMark';
import styles from './marks.module.css';
import { WALLS } from './walls';

const WAYS = ['north', 'east', 'south', 'west', 'other'] as const;
type Way = (typeof WAYS)[number];

const WAY_NAMES: Record<Way, string> = { north: 'N', east: 'E', south: 'S', west: 'W', other: 'Other' };

/** Takes down where paint stands for a mark: which way and how far. */
export function OffsetForm({ mark }: { readonly mark: Mark }) {
  const [way, setWay] = useState<Way>('north');
  const [typed, setTyped] = useState<number | undefined>(undefined);
  const [distance, setDistance] = useState<number | undefined>(undefined);
  const { frame } = useDerived();
  // a crew tells directions from north, a site keeps them from straight up on its plan
  const fromNorth = way === 'other' ? typed : WALLS[way];
  const azimuth = fromNorth === undefined ? undefined : planAzimuth(frame, fromNorth);
  const ready = azimuth !== undefined && distance !== undefined && distance > 0;
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (!ready) return;
        const done = changeMark(`Paint ${mark.label} elsewhere`, mark, { offset: { azimuth, distance } });
        if (done) notifyOfEdit(`The tapes of ${mark.label} are to the paint.`);
      }}
    >
      <Segments
        label="Which way from the mark"
        value={way}
        options={WAYS.map((id) => ({ id, name: WAY_NAMES[id] }))}
        onChange={setWay}
      />
      {way === 'other' ? <DirectionField label="Direction" value={typed} onChange={setTyped} /> : null}
      <LengthField label="How far" value={distance} onChange={setDistance} when="typing" />
      <Action look="primary" type="submit" isDisabled={!ready}>
        Paint it there
      </Action>
    </form>
  );
}
