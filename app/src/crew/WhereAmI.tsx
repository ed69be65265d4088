import { azimuthBetween, distance } from '@footmark/geometry';
import { type EarthFit, earthToPlan, trueAzimuth } from '@footmark/site';
import { Navigation } from 'lucide-react';
import { useEffect } from 'react';
import { usePlanPins } from '../canvas/planPins';
import { Action } from '../controls/Action';
import { useDevicePosition } from '../earth/useDevicePosition';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './crew.module.css';
import type { Stop } from './stops';

type Props = { readonly stop: Stop | null; readonly toEarth: EarthFit };

/** Shows the device's own place on the plan, and how far it is to the paint. */
export function WhereAmI({ stop, toEarth }: Props) {
  const { units } = useSite();
  const { frame } = useDerived();
  const { search, start, stop: end } = useDevicePosition();
  const found = search.is === 'found' ? search.position : null;
  const placed = found === null ? null : earthToPlan(toEarth, found);
  const at = placed?.ok === true ? placed.value : null;
  const accuracy = found?.accuracy ?? 0;
  useEffect(() => {
    usePlanPins.setState({ here: at === null ? null : { at, accuracy } });
  }, [at, accuracy]);
  const { crew } = words;
  const text =
    search.is === 'searching'
      ? crew.label('looking-for-position')
      : search.is === 'failed'
        ? crew.positionProblemText(search.why)
        : at === null || stop === null
          ? null
          : crew.whereAmIText(
              {
                distance: distance(at, stop.paint),
                azimuth: trueAzimuth(frame, azimuthBetween(at, stop.paint)),
                accuracy,
              },
              stop.label,
              units,
            );
  const on = search.is === 'searching' || search.is === 'found';
  return (
    <div className={styles.here}>
      <Action look={on ? 'primary' : 'plain'} onPress={on ? end : start}>
        <Navigation size={22} aria-hidden /> {crew.label('where-am-i')}
      </Action>
      {text === null ? null : <p role="status">{text}</p>}
    </div>
  );
}
