import { useWorkbench } from '../session/workbench';
import styles from './cards.module.css';
import { LegRow } from './LegRow';
import { LonePoint } from './LonePoint';
import type { OwnerProps } from './ownerProps';
import { VertexRow } from './VertexRow';

/** The points of a thing, how each was measured, and between them its legs with their lengths. One is open for change. */
export function VertexList({ owner, closed }: OwnerProps) {
  const { vertex, leg } = useWorkbench();
  if (owner.vertices.length === 1) return <LonePoint owner={owner} />;
  return (
    <ul className={styles.rows}>
      {owner.vertices.map((v, index) => {
        const next = owner.vertices[index + 1] ?? (closed ? owner.vertices[0] : undefined);
        return (
          <li key={v.id}>
            <VertexRow owner={owner} closed={closed} vertex={v} index={index} isOpen={vertex === v.id} />
            {next ? <LegRow owner={owner} start={v} end={next} isOpen={leg === next.id} /> : null}
          </li>
        );
      })}
    </ul>
  );
}
