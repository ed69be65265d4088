import { dangersAt } from '@footmark/dig';
import { azimuthBetween, distance } from '@footmark/geometry';
import { trueAzimuth } from '@footmark/site';
import { useMemo } from 'react';
import { useFit, useWeighing } from '../fit/fitSession';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { CrewCautions } from './CrewCautions';
import { DangerList } from './DangerList';
import { StopTapes } from './StopTapes';
import styles from './stop.module.css';
import { crewHole, holeAt, type Stop } from './stops';
import { Ticks } from './Ticks';

/** All that matters for one mark, without scrolling on a phone. */
export function StopSheet({ stop }: { readonly stop: Stop }) {
  const site = useSite();
  const derived = useDerived();
  const { fit } = useFit();
  const { busy } = useWeighing();
  const { crew } = words;
  const hole = holeAt(stop, fit);
  const dangers = useMemo(() => dangersAt(site, derived, crewHole(stop, hole)), [site, derived, stop, hole]);
  const apart = distance(stop.at, stop.paint);
  return (
    <>
      <div className={styles.head}>
        <p className={styles.label} data-is={stop.is.what}>
          {stop.label}
        </p>
        <StopTitle stop={stop} />
      </div>
      {apart === 0 ? null : (
        <p className={styles.beside}>
          {crew.paintText(apart, trueAzimuth(derived.frame, azimuthBetween(stop.at, stop.paint)), site.units)}
        </p>
      )}
      <StopTapes ties={stop.ties} />
      <dl className={styles.sizes}>
        <div>
          <dt>{crew.label('depth')}</dt>
          <dd>{crew.depthText(stop.depth, site.units)}</dd>
        </div>
        {stop.is.what === 'mark' ? (
          <div>
            <dt>
              {crew.label('hole')} <small>{crew.label('hole-sides')}</small>
            </dt>
            <dd>{hole === null && busy ? '…' : crew.holeText(hole, site.units)}</dd>
          </div>
        ) : null}
      </dl>
      <DangerList dangers={dangers} />
      <CrewCautions />
      <Ticks stop={stop} />
    </>
  );
}

/** What was seen there, or what is laid there, and what was written down about it. */
function StopTitle({ stop }: { readonly stop: Stop }) {
  const { units } = useSite();
  if (stop.is.what === 'set-out') {
    const { point } = stop.is;
    const more = point.bend === null ? [] : words.setOutBendTexts(point.bend, units);
    return (
      <div className={styles.title}>
        <h2>{words.setOutName(point)}</h2>
        <p>{more.join(' ')}</p>
      </div>
    );
  }
  const { reading } = stop.is.mark;
  return (
    <div className={styles.title}>
      <h2>
        {words.observationName(reading.seen)}
        {reading.clock ? `, ${words.clockText(reading.clock)}` : ''}
      </h2>
      <p>{reading.note}</p>
    </div>
  );
}
