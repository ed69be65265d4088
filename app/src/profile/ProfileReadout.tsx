import { type PathProfile, profileAt } from '@footmark/site';
import { useSite } from '../session/siteSession';
import styles from './profile.module.css';
import { useProfilePointer } from './profilePointer';
import { readoutOf, slopeSaid } from './profileText';
import { useChosenStation } from './useChosenStation';

/** What the profile says of the place that is shown, else of what is chosen; of none, how the pipe falls as a whole. */
export function ProfileReadout({ profile }: { readonly profile: PathProfile }) {
  const { units } = useSite();
  const pointed = useProfilePointer((p) => p.place);
  const chosen = useChosenStation(profile);
  const station =
    pointed?.path === profile.path ? Math.min(pointed.station, profile.length) : chosen?.station;
  if (station !== undefined) {
    return (
      <dl className={styles.readout}>
        {readoutOf(profileAt(profile, station), profile, units).map(({ label, value, forWide }) => (
          <div key={label} className={forWide ? styles.wideOnly : undefined}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    );
  }
  return <p className={styles.whole}>{wholeOf(profile)}</p>;
}

function wholeOf({ heights, whole, points }: PathProfile): string {
  if (heights === 'below-ground') return 'Depths below the ground, which is taken as even';
  if (whole !== null) return `On the whole ${slopeSaid(whole)}`;
  return points.length === 1 ? 'One level is known; the rest is assumed' : 'No level is known';
}
