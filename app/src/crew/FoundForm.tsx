import { type FoundReport, type ObservationKind, observationKindIds } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Trash2 } from 'lucide-react';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { DiameterField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { recordOf } from './answerEdits';
import styles from './crew.module.css';
import { nameCrew, putDown, takeBack, useCrewSession } from './crewSession';
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
  const { units } = useSite();
  const answer = useCrewSession((s) => s.answer);
  const record = answer === null ? null : recordOf(answer, stop.about);
  const { label } = words.crew;
  const set = (facts: { [Fact in keyof FoundReport]?: FoundReport[Fact] | undefined }) =>
    putDown(stop, facts);
  const to = record?.depth?.to ?? 'top';
  return (
    <main className={styles.sheet} aria-label={label('we-found')}>
      <div className={marks.head}>
        <p className={marks.label} data-is={stop.is.what}>
          {stop.label}
        </p>
        <div className={marks.title}>
          <h2>{label('we-found')}</h2>
        </div>
        <Action look="primary" onPress={onClose}>
          {label('done')}
        </Action>
      </div>
      <FoundPlaceFields stop={stop} record={record} onChange={(where) => set({ where })} />
      <section className={forms.part}>
        <Segments
          label={label('depth-found')}
          value={to}
          options={[
            { id: 'top', name: label('to-top') },
            { id: 'invert', name: label('to-invert') },
          ]}
          onChange={(next) =>
            record?.depth === undefined ? undefined : set({ depth: { ...record.depth, to: next } })
          }
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
              onClose();
            }}
          >
            <Trash2 size={22} aria-hidden /> {label('remove-record')}
          </Action>
        )}
      </Fold>
    </main>
  );
}
