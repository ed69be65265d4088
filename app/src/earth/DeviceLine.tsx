import { formatLatLon } from '@footmark/site';
import { LocateFixed } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { accuracyText } from './accuracy';
import type { DevicePosition, PositionSearch } from './useDevicePosition';

type Failure = Extract<PositionSearch, { is: 'failed' }>['why'];

/** Why there is no position; `instead` is what to do then. */
const FAILURE_TEXT: Record<Failure, (instead: string) => string> = {
  none: (instead) => `This device tells no position. ${atStart(instead)} instead.`,
  refused: (instead) =>
    `This page may not know the position. Allow it in the browser’s settings for this page, or ${instead}.`,
  unavailable: (instead) =>
    `The device finds no position here. Step out from under roofs and trees, or ${instead}.`,
  'too-slow': (instead) =>
    `The device found no position within a minute. Step into the open and try again, or ${instead}.`,
};

function atStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

type DeviceProps = {
  readonly search: PositionSearch;
  /** What can be done where there is no position. */
  readonly instead: string;
  readonly onStart: () => void;
  readonly onTake: (position: DevicePosition) => void;
};

/** How the search for this device's position goes, and the button that takes it. */
export function DeviceLine({ search, instead, onStart, onTake }: DeviceProps) {
  const { units } = useSite();
  if (search.is === 'searching') return <p className={cards.empty}>Looking for this device’s position.</p>;
  if (search.is === 'found') {
    const { position } = search;
    return (
      <>
        <p className={cards.empty} role="status">
          This device says it is at {formatLatLon(position)}, to {accuracyText(position.accuracy, units)}.
          Hold it over the point until that gets no better.
        </p>
        <Action onPress={() => onTake(position)}>
          <LocateFixed size={20} aria-hidden /> Take this position
        </Action>
      </>
    );
  }
  return (
    <>
      {search.is === 'failed' ? <p className={cards.problem}>{FAILURE_TEXT[search.why](instead)}</p> : null}
      <Action onPress={onStart}>
        <LocateFixed size={20} aria-hidden /> Use this device’s position
      </Action>
    </>
  );
}
