import { type ObservationKind, observationKindIds } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { DiameterField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { othersNear, recordOf } from './answerEdits';
import styles from './crew.module.css';
import {
  changeRecord,
  type FoundFacts,
  nameCrew,
  putDown,
  putDownOther,
  takeBack,
  useCrewSession,
} from './crewSession';
import { FoundPhotos } from './FoundPhotos';
import { FoundPlaceFields } from './FoundPlaceFields';
import forms from './found.module.css';
import { MATERIALS } from './materials';
import { Stepper } from './Stepper';
import marks from './stop.module.css';
import type { Stop } from './stops';

type Props = { readonly stop: Stop; readonly onClose: () => void };

const NOT_SAID = 'not-said';

/** What was found at a mark. Everything is kept with the press that says it. */
export function FoundForm({ stop, onClose }: Props) {
  const site = useSite();
  const { units } = site;
  const answer = useCrewSession((s) => s.answer);
  // something else near it, while that is in hand
  const [other, setOther] = useState<string | null>(null);
  const record =
    answer === null
      ? null
      : other === null
        ? recordOf(answer, stop.about)
        : (answer.found.find((f) => f.id === other) ?? null);
  const { label } = words.crew;
  const set = (facts: FoundFacts) =>
    other === null ? putDown(stop, facts) : changeRecord(other, stop, facts);
  const close = () => (other === null ? onClose() : setOther(null));
  // to what a depth is going to be measured, as long as there is none
  const [measuredTo, setMeasuredTo] = useState<'top' | 'invert'>('top');
  const to = record?.depth?.to ?? measuredTo;
  return (
    <main className={styles.sheet} aria-label={label('we-found')}>
      <div className={marks.head}>
        <p className={marks.label} data-is={stop.is.what}>
          {stop.label}
        </p>
        <div className={marks.title}>
          <h2>{label(other === null ? 'we-found' : 'something-else')}</h2>
        </div>
        <Action look="primary" onPress={close}>
          {label('done')}
        </Action>
      </div>
      <FoundPlaceFields
        key={other ?? 'own'}
        stop={stop}
        record={record}
        onChange={(where) => set({ where })}
      />
      <section className={forms.part}>
        <Segments
          label={label('depth-found')}
          value={to}
          options={[
            { id: 'top', name: label('to-top') },
            { id: 'invert', name: label('to-invert') },
          ]}
          onChange={(next) => {
            setMeasuredTo(next);
            if (record?.depth !== undefined) set({ depth: { ...record.depth, to: next } });
          }}
        />
        <Stepper
          label={label('depth-found')}
          value={record?.depth?.depth}
          start={stop.depth?.depth ?? 1}
          least={0}
          units={units}
          print={(metres) => lengthText(metres, units)}
          ways={[label('less'), label('more')]}
          onChange={(depth) => set({ depth: { to, depth } })}
        />
      </section>
      <Choice<ObservationKind | typeof NOT_SAID>
        label={label('what-it-was')}
        options={[
          { id: NOT_SAID, name: label('not-said') },
          ...observationKindIds.map((id) => ({ id, name: words.observationName(id) })),
        ]}
        value={record?.seen ?? NOT_SAID}
        onChange={(seen) => set({ seen: seen === NOT_SAID ? undefined : seen })}
      />
      <FoundPhotos photos={record?.photos ?? []} onChange={(photos) => set({ photos: [...photos] })} />
      <TextLine
        label={label('note')}
        value={record?.note ?? ''}
        lines={2}
        maxLength={5000}
        onCommit={(note) => set({ note })}
      />
      <Fold title={label('more')}>
        <Choice
          label={label('material')}
          options={MATERIALS.map((id) => ({ id, name: words.materialName(id) }))}
          value={record?.material ?? null}
          placeholder={label('not-said')}
          onChange={(material) => set({ material })}
        />
        <DiameterField
          label={label('diameter')}
          value={record?.diameter}
          onChange={(diameter) => set({ diameter })}
        />
        <TextLine label={label('your-name')} value={answer?.by ?? ''} onCommit={nameCrew} />
        {record === null ? null : (
          <Action
            look="danger"
            wide
            onPress={() => {
              takeBack(record);
              close();
            }}
          >
            <Trash2 size={22} aria-hidden /> {label('remove-record')}
          </Action>
        )}
      </Fold>
      {other === null && answer !== null ? (
        <section className={forms.part}>
          <Action wide onPress={() => setOther(putDownOther(stop))}>
            <Plus size={24} aria-hidden /> {label('something-else')}
          </Action>
          {othersNear(answer, stop.label).map((found) => (
            <Action key={found.id} wide onPress={() => setOther(found.id)}>
              {words.crew.foundText(found, site)}
            </Action>
          ))}
        </section>
      ) : null}
    </main>
  );
}
