import type { Ref } from '@footmark/site';
import { Crosshair } from 'lucide-react';
import { useEffect, useId, useRef } from 'react';
import { Action } from '../controls/Action';
import { dropPick, pickPoint, usePicking } from '../session/picking';
import styles from './measure.module.css';
import { PointList } from './PointList';

type Props = {
  readonly label: string;
  readonly value: Ref | null;
  readonly self?: Ref | null;
  readonly onChoose: (point: Ref) => void;
  /** Where a line is wanted, a tap on one gives both its ends. */
  readonly onChooseLine?: (from: Ref, to: Ref) => void;
};

/** A point of the site: from the list, or by a tap on the plan. */
export function PointField({ label, value, self = null, onChoose, onChooseLine }: Props) {
  const id = useId();
  const waits = usePicking((p) => p.pick?.by === id);
  // a tap answers the field as it is then, not as it was when it began to wait
  const choose = useRef({ onChoose, onChooseLine });
  choose.current = { onChoose, onChooseLine };
  useEffect(() => () => dropPick(id), [id]);
  return (
    <div className={styles.ref}>
      <PointList
        label={label}
        value={value}
        self={self}
        onChoose={onChoose}
        placeholder={waits ? (onChooseLine ? 'Tap the line on the plan' : 'Tap it on the plan') : 'Choose'}
      />
      <Action
        look="icon"
        aria-label={`Tap ${label.toLowerCase()} on the plan`}
        onPress={() =>
          pickPoint(
            id,
            (point) => choose.current.onChoose(point),
            onChooseLine === undefined ? null : (from, to) => choose.current.onChooseLine?.(from, to),
          )
        }
      >
        <Crosshair size={20} aria-hidden />
      </Action>
    </div>
  );
}
