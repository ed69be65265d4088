import { addFeature, type Feature, freeName, type Mark, type Spot, takenNames } from '@footmark/site';
import { Pointer, X } from 'lucide-react';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { SpotForm } from '../measure/SpotForm';
import { edit } from '../session/siteSession';
import { newId } from '../tools/newId';
import { startDrawing } from '../tools/useTool';
import { words } from '../words';
import { DeviceLocate } from './DeviceLocate';
import styles from './marks.module.css';

const METHODS = ['crossed', 'peak', 'rough', 'exposed'] as const;
type Method = (typeof METHODS)[number];

const WAYS = [
  { id: 'taped', name: 'Taped' },
  { id: 'finger', name: 'By finger' },
  { id: 'device', name: 'This device' },
] as const;
type Way = (typeof WAYS)[number]['id'];

type Props = { readonly mark: Mark; readonly onDone: (isAdded: boolean) => void };

/** Takes down where a receiver found the sonde at a reading. */
export function LocateForm({ mark, onDone }: Props) {
  const [method, setMethod] = useState<Method>('crossed');
  const [depth, setDepth] = useState<number | undefined>(undefined);
  const [way, setWay] = useState<Way>('taped');
  const name = words.featureKindName('locate');
  const fields = {
    reading: { run: mark.run.id, reading: mark.reading.id },
    method,
    ...(depth === undefined ? {} : { depth }),
  };
  const add = (spot: Spot) => {
    const done = edit(`Add locate at ${mark.label}`, (s) => {
      const feature: Feature = {
        id: newId('f'),
        kind: 'locate',
        name: freeName(takenNames(s), name),
        vertices: [{ id: 'a', spot }],
        fields,
      };
      return addFeature(s, { feature });
    });
    if (done) onDone(true);
  };
  return (
    <div className={styles.form}>
      <Choice
        label={words.fieldName('locate', 'method')}
        options={METHODS.map((id) => ({ id, name: words.choiceName(id) }))}
        value={method}
        onChange={setMethod}
      />
      <LengthField label="Depth shown" value={depth} onChange={setDepth} when="typing" />
      <Segments label="Where that is" value={way} options={WAYS} onChange={setWay} />
      {way === 'taped' ? (
        <SpotForm self={null} spot={null} place={null} submit="Add the locate" onPlace={add} />
      ) : null}
      {way === 'finger' ? (
        <Action
          look="primary"
          onPress={() =>
            startDrawing({
              what: 'feature',
              kind: 'locate',
              fields,
              from: { kind: 'reading', run: mark.run.id, id: mark.reading.id },
            })
          }
        >
          <Pointer size={20} aria-hidden /> Tap it on the plan
        </Action>
      ) : null}
      {way === 'device' ? <DeviceLocate onPlace={add} /> : null}
      <Action look="quiet" onPress={() => onDone(false)}>
        <X size={20} aria-hidden /> Not now
      </Action>
    </div>
  );
}
