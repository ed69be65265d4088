import type { FoundReport, FoundWhere } from '@footmark/site';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './found.module.css';
import { Stepper } from './Stepper';
import type { Stop } from './stops';
import { TapesFields } from './TapesFields';

type Props = {
  readonly stop: Stop;
  readonly record: FoundReport | null;
  readonly onChange: (where: FoundWhere) => void;
};

/** Where it was: so far along and to the side of the paint, or by the two tapes that set the paint out. */
export function FoundPlaceFields({ stop, record, onChange }: Props) {
  const { units } = useSite();
  const [by, setBy] = useState<'paint' | 'tapes'>(record?.where?.by === 'tapes' ? 'tapes' : 'paint');
  const { crew } = words;
  const where = record?.where?.by === 'paint' ? record.where : undefined;
  const { along = 0, right = 0 } = where ?? {};
  return (
    <section className={styles.part}>
      {stop.ties === null ? (
        <h3>{crew.label('where')}</h3>
      ) : (
        <Segments
          label={crew.label('where')}
          value={by}
          options={[
            { id: 'paint', name: crew.label('from-paint') },
            { id: 'tapes', name: crew.label('by-tapes') },
          ]}
          onChange={setBy}
        />
      )}
      {by === 'tapes' && stop.ties !== null ? (
        <TapesFields ties={stop.ties} near={stop.paint} where={record?.where} onChange={onChange} />
      ) : (
        <>
          {along === 0 && right === 0 && where !== undefined ? null : (
            <Action wide onPress={() => onChange({ by: 'paint', along: 0, right: 0 })}>
              {crew.label('at-paint')}
            </Action>
          )}
          <h3>{crew.label('along')}</h3>
          <Stepper
            label={crew.label('along')}
            value={where?.along}
            units={units}
            print={(metres) => crew.alongText(metres, units)}
            ways={[crew.wayText('upstream'), crew.wayText('downstream')]}
            onChange={(metres) => onChange({ by: 'paint', along: metres, right })}
          />
          <h3>{crew.label('across')}</h3>
          <Stepper
            label={crew.label('across')}
            value={where?.right}
            units={units}
            print={(metres) => crew.acrossText(metres, units)}
            ways={[crew.wayText('left'), crew.wayText('right')]}
            onChange={(metres) => onChange({ by: 'paint', along, right: metres })}
          />
        </>
      )}
    </section>
  );
}
