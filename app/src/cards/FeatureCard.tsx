import { distance } from '@footmark/geometry';
import {
  type Feature,
  type FieldSpec,
  kindSpec,
  nameFeature,
  type ReadingRef,
  setField,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowLeft, Trash2 } from 'lucide-react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { DiametersField } from '../controls/DiametersField';
import { TextLine } from '../controls/TextLine';
import { Tick } from '../controls/Tick';
import { DiameterField, LengthField } from '../controls/unitFields';
import { ConcernsSection } from '../dig/ConcernsSection';
import { PhotoField } from '../pictures/PhotoField';
import { removeThings } from '../session/chosenThings';
import { currentSite, edit, useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { ClosureSection } from './ClosureSection';
import styles from './cards.module.css';
import { FindingRow } from './FindingRow';
import { ReadingField } from './ReadingField';
import { ThingActions } from './ThingActions';
import { targetOf } from './targetOf';
import { VertexList } from './VertexList';

/** One thing in the yard: its name, what is known of it, and how each of its points was measured. */
export function FeatureCard({ feature }: { readonly feature: Feature }) {
  const site = useSite();
  const derived = useDerived();
  const kind = words.featureKindName(feature.kind);
  const spec = kindSpec(feature.kind);
  const about = derived.findings.filter((f) => f.at.kind === 'feature' && f.at.id === feature.id);
  const remove = () => removeThings([feature.id]);
  return (
    <section className={styles.card} aria-label={words.targetName(targetOf(feature), site)}>
      <div className={styles.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Yard
        </Action>
        <Action look="quiet" onPress={remove} isDisabled={feature.locked === true}>
          <Trash2 size={20} aria-hidden /> Delete
        </Action>
      </div>
      <h2 className={styles.title}>{kind}</h2>
      {about.map((finding) => (
        <FindingRow key={finding.code + JSON.stringify(finding.at)} finding={finding} />
      ))}
      <ConcernsSection
        here={{ kind: 'feature', id: feature.id }}
        told={about.some((f) => f.code === 'tree-has-no-diameter') ? ['tree-without-diameter'] : []}
      />
      <TextLine
        label="Name"
        value={feature.name}
        onCommit={(name) =>
          edit(`Name the ${kind.toLowerCase()}`, (s) => nameFeature(s, { id: feature.id, name }))
        }
      />
      <div className={styles.section}>
        <h3>{spec.shape === 'point' ? 'Where it is' : sizeText()}</h3>
        <VertexList owner={feature} closed={spec.shape === 'area'} />
      </div>
      {spec.layer === 'land' && spec.shape === 'area' ? <ClosureSection feature={feature} /> : null}
      {Object.entries(spec.fields).map(([name, field]) => (
        <FieldInput key={name} feature={feature} name={name} field={field} />
      ))}
      <ThingActions owners={[feature]} />
    </section>
  );

  function sizeText(): string {
    const points = derived.features.get(feature.id)?.points ?? [];
    const legs = spec.shape === 'area' ? points : points.slice(0, -1);
    const round = legs.reduce((sum, p, i) => sum + distance(p, points[(i + 1) % points.length] ?? p), 0);
    const text = lengthText(round, site.units);
    return spec.shape === 'area' ? `Corners, ${text} round` : `Points, ${text} long`;
  }
}

type FieldProps = { readonly feature: Feature; readonly name: string; readonly field: FieldSpec };

/** The control that a field's entry in the kinds table asks for. */
function FieldInput({ feature, name, field }: FieldProps) {
  const label = words.fieldName(feature.kind, name);
  const value = (feature.fields as Record<string, unknown>)[name]; // the entry's own schema says what it is
  const set = (next: unknown) =>
    void edit(`Change ${label.toLowerCase()}`, (s) =>
      setField(s, { id: feature.id, field: name, value: next }),
    );
  const number = typeof value === 'number' ? value : undefined;
  switch (field.input.as) {
    case 'length':
      return <LengthField label={label} value={number} onChange={set} />;
    case 'elevation':
      return <LengthField label={label} value={number} onChange={set} allowNegative />;
    case 'diameter':
      return <DiameterField label={label} value={number} onChange={set} />;
    case 'diameters':
      return (
        <DiametersField
          label={label}
          value={value as readonly number[] | undefined} // by the schema
          onChange={set}
        />
      );
    case 'file':
      return (
        <PhotoField
          label={label}
          value={typeof value === 'string' ? value : undefined}
          onChange={(file) => {
            // the thing may be gone when its photo has been read
            if (currentSite().features.some((f) => f.id === feature.id)) set(file);
          }}
        />
      );
    case 'reading':
      return (
        <ReadingField
          label={label}
          value={value as ReadingRef | undefined} // by the schema
          onChange={set}
        />
      );
    case 'flag':
      return (
        <Tick isSelected={value === true} onChange={(on) => set(on ? true : undefined)}>
          {label}
        </Tick>
      );
    case 'text':
      return (
        <TextLine
          label={label}
          value={typeof value === 'string' ? value : ''}
          onCommit={(text) => set(text === '' ? undefined : text)}
        />
      );
    case 'choice':
      return (
        <Choice
          label={label}
          options={[
            { id: '', name: 'Not given' },
            ...field.input.choices.map((choice) => ({ id: choice, name: words.choiceName(choice) })),
          ]}
          value={typeof value === 'string' ? value : ''}
          onChange={(choice) => set(choice === '' ? undefined : choice)}
        />
      );
  }
}
