import type { Ref } from '@footmark/site';
import { Crosshair } from 'lucide-react';
import { PointList } from '../cards/PointList';
import { Action } from '../controls/Action';
import measure from '../measure/measure.module.css';
import { pickPoint } from '../session/picking';

type Props = { readonly label: string; readonly value: Ref | null; readonly onChoose: (point: Ref) => void };

/** A point of the site: from the list, or by a tap on the plan. */
export function PointField({ label, value, onChoose }: Props) {
  return (
    <div className={measure.ref}>
      <PointList label={label} onChoose={onChoose} {...(value === null ? {} : { value })} />
      <Action
        look="icon"
        aria-label={`Tap ${label.toLowerCase()} on the plan`}
        onPress={() => pickPoint(onChoose)}
      >
        <Crosshair size={20} aria-hidden />
      </Action>
    </div>
  );
}
