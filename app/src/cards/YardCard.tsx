import {
  changeSite,
  type Feature,
  type FeatureKind,
  featureKindIds,
  kindSpec,
  type Units,
} from '@footmark/site';
import { ChevronRight, Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { LengthField } from '../controls/unitFields';
import { EarthFold } from '../earth/EarthFold';
import { PicturesFold } from '../pictures/PicturesFold';
import { usePictureHand } from '../pictures/pictureHand';
import { UnderlayCard } from '../pictures/UnderlayCard';
import { edit, useDerived, useSite } from '../session/siteSession';
import { select, useWorkbench } from '../session/workbench';
import { startDrawing } from '../tools/useTool';
import { words } from '../words';
import styles from './cards.module.css';
import { FeatureCard } from './FeatureCard';
import { Fold } from './Fold';
import { targetOf } from './targetOf';

/** What nearly every yard has, in the order in which it is measured. */
const USUAL: readonly FeatureKind[] = [
  'building',
  'cleanout',
  'stack',
  'tree',
  'boundary',
  'main',
  'tap',
  'reference-point',
];

/** The yard: what is in it, and what can be put in. */
export function YardCard() {
  const site = useSite();
  const selected = useWorkbench((w) => w.selected);
  const inHand = usePictureHand((hand) => hand.inHand);
  const picture = site.underlays.find((u) => u.id === inHand);
  const feature = selected?.kind === 'feature' ? site.features.find((f) => f.id === selected.id) : undefined;
  if (feature !== undefined) return <FeatureCard key={feature.id} feature={feature} />;
  if (picture !== undefined) return <UnderlayCard key={picture.id} underlay={picture} />;
  return (
    <section className={styles.card} aria-label="Yard">
      <AddChips />
      {site.features.length === 0 ? (
        <p className={styles.empty}>
          Start with the house: type its walls as you tape round it, or tap its corners roughly and measure
          later.
        </p>
      ) : (
        <FeatureList />
      )}
      <PicturesFold />
      <EarthFold />
      <SiteFacts />
    </section>
  );
}

function AddChips() {
  const [all, setAll] = useState(false);
  const kinds = all ? featureKindIds : USUAL;
  return (
    <div className={styles.section}>
      <div className={styles.head}>
        <h2>Yard</h2>
        <Action look="quiet" onPress={() => setAll((on) => !on)} aria-expanded={all}>
          {all ? 'Fewer kinds' : 'All kinds'}
        </Action>
      </div>
      <div className={styles.chips}>
        {kinds.map((kind) => (
          <Action key={kind} onPress={() => startDrawing({ what: 'feature', kind })}>
            <Plus size={18} aria-hidden /> {words.featureKindName(kind)}
          </Action>
        ))}
      </div>
    </div>
  );
}

function FeatureList() {
  const site = useSite();
  const byLayer = groupByLayer(site.features);
  return (
    <div className={styles.section}>
      {[...byLayer].map(([layer, features]) => (
        <div key={layer} className={styles.section}>
          <h3>{words.layerName(layer)}</h3>
          <ul className={styles.rows}>
            {features.map((feature) => (
              <li key={feature.id}>
                <FeatureRow feature={feature} />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  );
}

function groupByLayer(features: readonly Feature[]) {
  const groups = new Map<ReturnType<typeof kindSpec>['layer'], Feature[]>();
  for (const feature of features) {
    const { layer } = kindSpec(feature.kind);
    groups.set(layer, [...(groups.get(layer) ?? []), feature]);
  }
  return groups;
}

function FeatureRow({ feature }: { readonly feature: Feature }) {
  const site = useSite();
  const derived = useDerived();
  const measured = derived.features.get(feature.id)?.measured ?? [];
  const kind = words.featureKindName(feature.kind);
  const how = measured.every((m) => m) ? 'measured' : measured.some((m) => m) ? 'partly measured' : 'by eye';
  return (
    <Button className={styles.row ?? ''} onPress={() => select({ kind: 'feature', id: feature.id })}>
      <span className={styles.grow}>
        {words.targetName(targetOf(feature), site)}
        <small>{feature.name && feature.name !== kind ? `${kind}, ${how}` : how}</small>
      </span>
      <ChevronRight size={20} aria-hidden />
    </Button>
  );
}

function SiteFacts() {
  const site = useSite();
  const { units } = site;
  const setUnits = (part: Partial<Units>) =>
    edit('Change units', (s) => changeSite(s, { units: { ...s.units, ...part } }));
  return (
    <Fold title="This site">
      <TextLine
        label="Name"
        value={site.name}
        onCommit={(name) => edit('Name the site', (s) => changeSite(s, { name }))}
      />
      <TextLine
        label="Address"
        value={site.address}
        onCommit={(address) => edit('Change the address', (s) => changeSite(s, { address }))}
      />
      <TextLine
        label="Note"
        value={site.note}
        lines={3}
        maxLength={5000}
        onCommit={(note) => edit('Change the note', (s) => changeSite(s, { note }))}
      />
      <Segments
        label="Lengths"
        value={units.length}
        options={[
          { id: 'ft-in', name: 'Feet and inches' },
          { id: 'ft', name: 'Decimal feet' },
          { id: 'm', name: 'Metres' },
        ]}
        onChange={(length) => setUnits({ length, diameter: length === 'm' ? 'mm' : 'in' })}
      />
      <Segments
        label="Directions"
        value={units.direction}
        options={[
          { id: 'bearing', name: 'Bearings' },
          { id: 'azimuth', name: 'Azimuths' },
        ]}
        onChange={(direction) => setUnits({ direction })}
      />
      <LengthField
        label="Length of the crew's tape"
        value={site.tape.length}
        required
        onChange={(length) =>
          length !== undefined &&
          length > 0 &&
          edit('Change the tape', (s) => changeSite(s, { tape: { ...s.tape, length } }))
        }
      />
    </Fold>
  );
}
