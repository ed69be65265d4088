import { distance } from '@footmark/geometry';
import {
  followsPrevious,
  freeVertexId,
  insertVertex,
  movePoint,
  type PointOwner,
  type Ref,
  refKey,
  removeVertex,
  type Spot,
  setSpot,
  type Vertex,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { LegForm } from '../measure/LegForm';
import { SpotForm } from '../measure/SpotForm';
import { spotText } from '../measure/spotText';
import { derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { select, useWorkbench } from '../session/workbench';

import { FEWEST_POINTS } from '../tools/tool';
import styles from './cards.module.css';

type Props = { readonly owner: PointOwner; readonly closed: boolean };

/** The points of a thing: how each was measured, and the length to the next. One at a time is open for change. */
export function VertexList({ owner, closed }: Props) {
  const vertex = useWorkbench((w) => w.vertex);
  const alone = owner.vertices.length === 1;
  return (
    <ul className={styles.rows}>
      {owner.vertices.map((v, index) => (
        <li key={v.id}>
          {alone ? null : <VertexRow owner={owner} vertex={v} index={index} closed={closed} />}
          {alone || vertex === v.id ? (
            <VertexForm owner={owner} vertex={v} index={index} closed={closed} />
          ) : null}
        </li>
      ))}
    </ul>
  );
}

type RowProps = Props & { readonly vertex: Vertex; readonly index: number };

function targetOf(owner: PointOwner) {
  return { kind: 'kind' in owner ? ('feature' as const) : ('path' as const), id: owner.id };
}

function VertexRow({ owner, vertex, index, closed }: RowProps) {
  const site = useSite();
  const derived = useDerived();
  const open = useWorkbench((w) => w.vertex === vertex.id);
  const place = (v: Vertex | undefined) => v && derived.points.get(refKey({ of: owner.id, at: v.id }))?.at;
  const next = owner.vertices[index + 1] ?? (closed ? owner.vertices[0] : undefined);
  const [here, there] = [place(vertex), place(next)];
  return (
    <Button
      className={styles.row ?? ''}
      aria-expanded={open}
      onPress={() => select(targetOf(owner), open ? null : vertex.id)}
    >
      <span className={styles.letter}>{vertex.id.toUpperCase()}</span>
      <span className={styles.grow}>
        {spotText(vertex.spot, site)}
        {here && there && next ? (
          <small>
            {lengthText(distance(here, there), site.units)} to {next.id.toUpperCase()}
          </small>
        ) : null}
      </span>
    </Button>
  );
}

function VertexForm({ owner, vertex, index, closed }: RowProps) {
  const derived = useDerived();
  const site = useSite();
  const ref: Ref = { of: owner.id, at: vertex.id };
  const place = derived.points.get(refKey(ref))?.at ?? null;
  const alone = owner.vertices.length === 1;
  const name = owner.name || 'this';
  const set = (spot: Spot) => edit(`Measure ${name}`, (s) => setSpot(s, { ref, spot }));
  const fewest = alone ? 1 : closed ? FEWEST_POINTS.area : FEWEST_POINTS.line;
  const letGo = () => {
    if (place === null) return;
    const { points } = derivedFrom(site);
    edit(`Let go of ${name}`, (s) => movePoint(s, { ref, to: place, places: points }));
  };
  const remove = () => {
    const { points } = derivedFrom(site);
    edit(`Take a point out of ${name}`, (s) => removeVertex(s, { ref, places: points }));
    select(targetOf(owner));
  };
  const insert = () => {
    const next = owner.vertices[index + 1] ?? (closed ? owner.vertices[0] : undefined);
    const there = next && derived.points.get(refKey({ of: owner.id, at: next.id }))?.at;
    if (place === null || there === undefined) return;
    const { points } = derivedFrom(site);
    const id = freeVertexId(owner.vertices);
    const spot: Spot = { by: 'finger', x: (place.x + there.x) / 2, y: (place.y + there.y) / 2 };
    edit(`Put a point into ${name}`, (s) => insertVertex(s, { ref, vertex: { id, spot }, places: points }));
    select(targetOf(owner), id);
  };
  return (
    <div className={styles.vertexForm}>
      {alone ? <p>{spotText(vertex.spot, site)}</p> : null}
      {index > 0 && followsPrevious(vertex.spot) ? (
        <LegForm hasLegBefore={index > 1} onLeg={set} />
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
      <div className={styles.actions}>
        {vertex.spot.by === 'finger' ? null : <Action onPress={letGo}>Let go: drag it by hand</Action>}
        {alone || (!closed && index === owner.vertices.length - 1) ? null : (
          <Action onPress={insert}>Point between this and the next</Action>
        )}
        {owner.vertices.length > fewest ? <Action onPress={remove}>Remove this point</Action> : null}
      </div>
    </div>
  );
}
