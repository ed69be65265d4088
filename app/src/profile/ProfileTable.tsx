import { stationText } from '@footmark/drawing';
import { locate } from '@footmark/geometry';
import type { PathProfile } from '@footmark/site';
import { useId } from 'react';
import { Button } from 'react-aria-components';
import { bringIntoView } from '../canvas/planView';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { chooseStop } from './chooseStop';
import styles from './profile.module.css';
import { pointAt } from './profilePointer';
import type { ProfileStop } from './profileStops';
import { coverText, groundText, invertText, slopeSaid } from './profileText';

type Props = {
  readonly profile: PathProfile;
  readonly stops: readonly ProfileStop[];
};

/** The profile in figures: a row for every place that has something to say. A press on a row shows the place on the plan. */
export function ProfileTable({ profile, stops }: Props) {
  const { units } = useSite();
  const about = useId();
  return (
    <div className={styles.table}>
      <table aria-describedby={about}>
        <thead>
          <tr>
            <th scope="col">Station</th>
            <th scope="col">What is there</th>
            {profile.ground.even ? null : <th scope="col">Ground</th>}
            <th scope="col">{profile.heights === 'levels' ? 'Invert' : 'Invert, below the ground'}</th>
            <th scope="col">Cover</th>
            <th scope="col">Slope on from here</th>
          </tr>
        </thead>
        <tbody>
          {stops.map((stop) => (
            <StopRow key={stop.station} profile={profile} stop={stop} units={units} />
          ))}
        </tbody>
      </table>
      <p id={about}>{words.profileHeightsText(profile)}</p>
    </div>
  );
}

type RowProps = {
  readonly profile: PathProfile;
  readonly stop: ProfileStop;
  readonly units: ReturnType<typeof useSite>['units'];
};

function StopRow({ profile, stop, units }: RowProps) {
  const site = useSite();
  const derived = useDerived();
  const line = derived.paths.get(profile.path)?.line;
  const press = () => {
    pointAt({ path: profile.path, station: stop.station });
    if (stop.target !== null) chooseStop(stop.target);
    if (line !== undefined) bringIntoView(locate(line, stop.station).point);
  };
  return (
    <tr>
      <th scope="row">
        <Button className={styles.place ?? ''} onPress={press}>
          {stationText(stop.station, units)}
        </Button>
      </th>
      <td className={styles.what}>
        {stop.names.join('; ')}
        {stop.known.map((known) => (
          <small key={JSON.stringify(known.sounding.source)}>
            {words.levelSourceName(known.sounding.source, site)}
          </small>
        ))}
      </td>
      {profile.ground.even ? null : <td>{groundText(stop.at, profile, units) ?? '–'}</td>}
      <td>{invertText(stop.at, profile, units) ?? '–'}</td>
      <td>{coverText(stop.at, units) ?? '–'}</td>
      <td data-verdict={stop.slope?.verdict}>{stop.slope === null ? '' : slopeSaid(stop.slope)}</td>
    </tr>
  );
}
