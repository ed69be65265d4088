import {
  fewestVertices,
  followsPrevious,
  freeVertexId,
  isPath,
  movePoint,
  type Ref,
  refKey,
  removeVertex,
  type Spot,
  setSpot,
  splitLeg,
  type Vertex,
} from '@footmark/site';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { ArcForm } from '../measure/ArcForm';
import { LegForm } from '../measure/LegForm';
import { SpotForm } from '../measure/SpotForm';
import { spotText } from '../measure/spotText';
import { derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import styles from './cards.module.css';
import type { OwnerProps } from './ownerProps';
import { PathPointFields } from './PathPointFields';
import { TapeResiduals } from './TapeResiduals';
import { targetOf } from './targetOf';

type Props = OwnerProps & { readonly vertex: Vertex; readonly index: number; readonly isOpen: boolean };

/** One point of a line or an outline. */
export function VertexRow({ owner, closed, vertex, index, isOpen }: Props) {
  const site = useSite();
  return (
    <>
      <Button
        className={styles.row ?? ''}
        aria-expanded={isOpen}
        onPress={() => select(targetOf(owner), isOpen ? null : vertex.id)}
      >
        <span className={styles.letter}>{vertex.id.toUpperCase()}</span>
        <span className={styles.grow}>{spotText(vertex.spot, site)}</span>
      </Button>
      {isOpen && !owner.locked ? (
        <VertexForm owner={owner} closed={closed} vertex={vertex} index={index} />
      ) : null}
    </>
  );
}

function VertexForm({ owner, closed, vertex, index }: Omit<Props, 'isOpen'>) {
  const site = useSite();
  const derived = useDerived();
  const ref: Ref = { of: owner.id, at: vertex.id };
  const place = derived.points.get(refKey(ref))?.at ?? null;
  const next = owner.vertices[index + 1] ?? (closed ? owner.vertices[0] : undefined);
  const name = words.targetName(targetOf(owner), site);
  const { points } = derivedFrom(site);
  const set = (spot: Spot) => edit(`Measure ${name}`, (s) => setSpot(s, { ref, spot }));
  const letGo = () =>
    place && edit(`Let go of ${name}`, (s) => movePoint(s, { ref, to: place, places: points }));
  const remove = () => {
    edit(`Take a point out of ${name}`, (s) => removeVertex(s, { ref, places: points }));
    select(targetOf(owner));
  };
  const insert = () => {
    const id = freeVertexId(owner.vertices);
    edit(`Put a point into ${name}`, (s) => splitLeg(s, { after: ref, id, places: points }));
    select(targetOf(owner), id);
  };
  return (
    <div className={styles.vertexForm}>
      <TapeResiduals self={ref} spot={vertex.spot} />
      {index > 0 && followsPrevious(vertex.spot) ? (
        <>
          <LegForm hasLegBefore={index > 1} onLeg={set} />
          {vertex.spot.by === 'arc' ? <ArcForm hasLegBefore={index > 1} onArc={set} /> : null}
        </>
      ) : (
        <SpotForm
          key={JSON.stringify(vertex.spot)}
          self={ref}
          spot={vertex.spot}
          place={place}
          submit="Use this measurement"
          onPlace={set}
        />
      )}
      {isPath(owner) ? <PathPointFields path={owner} vertex={vertex} /> : null}
      <div className={styles.actions}>
        {vertex.spot.by === 'finger' || vertex.spot.by === 'arc' ? null : (
          <Action onPress={letGo}>Let go: drag it by hand</Action>
        )}
        {next === undefined ? null : <Action onPress={insert}>Point between this and the next</Action>}
        {owner.vertices.length > fewestVertices(owner) ? (
          <Action onPress={remove}>Remove this point</Action>
        ) : null}
      </div>
    </div>
  );
}
