import type { Mark, MarkPlace } from '@footmark/site';
import { directionText, lengthText } from '@footmark/words';
import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { DirectionField } from '../earth/DirectionField';
import { useSite } from '../session/siteSession';
import { changeMark } from './changeMark';
import styles from './marks.module.css';
import { TapesList } from './TapesList';

const WALLS = { north: 0, east: Math.PI / 2, south: Math.PI, west: (3 * Math.PI) / 2 } as const;
const WAYS = ['north', 'east', 'south', 'west', 'other'] as const;
type Way = (typeof WAYS)[number];

const WAY_NAMES: Record<Way, string> = {
  north: 'N',
  east: 'E',
  south: 'S',
  west: 'W',
  other: 'Other',
};

type Props = { readonly mark: Mark; readonly place: MarkPlace };

/** Where paint stands that cannot stand on its mark: how far off, which way, and the tapes to that place. */
export function OffsetSection({ mark, place }: Props) {
  const { units } = useSite();
  const { offset } = mark.reading;
  return (
    <Fold title="Paint stands elsewhere" isOpen={offset !== undefined}>
      {offset === undefined ? (
        <>
          <p className={cards.empty}>
            For a mark on a deck, in a bed or in water: paint beside it, with an arrow back to it.
          </p>
          <OffsetForm mark={mark} />
        </>
      ) : (
        <>
          <p>
            Paint {lengthText(offset.distance, units)} off, {directionText(offset.azimuth, units)} from the
            mark.
          </p>
          {place.paint?.ties ? (
            <TapesList ties={place.paint.ties} />
          ) : (
            <p className={cards.sub}>No tapes reach the paint.</p>
          )}
          <div className={cards.actions}>
            <Action
              onPress={() => changeMark(`Paint ${mark.label} on its place`, mark, { offset: undefined })}
            >
              <Trash2 size={20} aria-hidden /> Paint on the mark after all
            </Action>
          </div>
        </>
      )}
    </Fold>
  );
}

function OffsetForm({ mark }: { readonly mark: Mark }) {
  const [way, setWay] = useState<Way>('north');
  const [typed, setTyped] = useState<number | undefined>(undefined);
  const [distance, setDistance] = useState<number | undefined>(undefined);
  const azimuth = way === 'other' ? typed : WALLS[way];
  const ready = azimuth !== undefined && distance !== undefined && distance > 0;
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (ready) changeMark(`Paint ${mark.label} elsewhere`, mark, { offset: { azimuth, distance } });
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
