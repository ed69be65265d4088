import { accuracySigma, earthToPlan, type Spot } from '@footmark/site';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { DeviceLine } from '../earth/DeviceLine';
import { type DevicePosition, useDevicePosition } from '../earth/useDevicePosition';
import { useDerived } from '../session/siteSession';
import { toggleLeaf } from '../session/workbench';

/** Puts a place down where this device stands, as sure as the device says that it is. */
export function DeviceLocate({ onPlace }: { readonly onPlace: (spot: Spot) => void }) {
  const { frame } = useDerived();
  const { search, start, stop } = useDevicePosition();
  const [isOut, setIsOut] = useState(false);
  const { toEarth } = frame;
  if (toEarth === null || !frame.known) {
    return (
      <>
        <p className={cards.empty}>
          This needs a sketch that knows where it lies on the earth and which way is north.
        </p>
        <Action onPress={() => toggleLeaf('north')}>Say where north and the site are</Action>
      </>
    );
  }
  const take = (position: DevicePosition) => {
    const at = earthToPlan(toEarth, position);
    setIsOut(!at.ok);
    if (!at.ok) return;
    stop();
    onPlace({ by: 'coordinates', ...at.value, sigma: accuracySigma(position.accuracy) });
  };
  return (
    <>
      <DeviceLine search={search} instead="tape it" onStart={start} onTake={take} />
      {isOut ? <p className={cards.problem}>That position is too far from this site.</p> : null}
    </>
  );
}
