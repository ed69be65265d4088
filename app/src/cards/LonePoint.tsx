import { movePoint, type PointOwner, refKey, setSpot } from '@footmark/site';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { SpotForm } from '../measure/SpotForm';
import { spotText } from '../measure/spotText';
import { derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './cards.module.css';
import { TapeResiduals } from './TapeResiduals';
import { targetOf } from './targetOf';

/** Where a thing of one point is: how that was measured, to be measured anew. */
export function LonePoint({ owner }: { readonly owner: PointOwner }) {
  const site = useSite();
  const derived = useDerived();
  const [measuring, setMeasuring] = useState(false);
  const [vertex] = owner.vertices;
  if (vertex === undefined) return null;
  const ref = { of: owner.id, at: vertex.id };
  const place = derived.points.get(refKey(ref))?.at ?? null;
  const name = words.targetName(targetOf(owner), site);
  const letGo = () => {
    if (place === null) return;
    const { points } = derivedFrom(site);
    edit(`Let go of ${name}`, (s) => movePoint(s, { ref, to: place, places: points }));
  };
  return (
    <>
      <p>{spotText(vertex.spot, site)}</p>
      <TapeResiduals self={ref} spot={vertex.spot} />
      {owner.locked ? null : measuring ? (
        <SpotForm
          self={ref}
          spot={vertex.spot}
          place={place}
          submit="Use this measurement"
          onPlace={(spot) => {
            if (edit(`Measure ${name}`, (s) => setSpot(s, { ref, spot }))) setMeasuring(false);
          }}
          onCancel={() => setMeasuring(false)}
        />
      ) : (
        <div className={styles.actions}>
          <Action onPress={() => setMeasuring(true)}>
            {vertex.spot.by === 'finger' ? 'Type how it was measured' : 'Correct the measurement'}
          </Action>
          {vertex.spot.by === 'finger' ? null : <Action onPress={letGo}>Let go: drag it by hand</Action>}
        </div>
      )}
    </>
  );
}
