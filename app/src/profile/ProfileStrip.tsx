import type { PathProfile } from '@footmark/site';
import { ChevronDown, Table2, X } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { Toggle } from '../controls/Toggle';
import { Follows } from '../session/Follows';
import { useDerived, useSite } from '../session/siteSession';
import { select, useWorkbench } from '../session/workbench';
import { words } from '../words';
import { chartLayout } from './chartLayout';
import { ProfileChart } from './ProfileChart';
import { ProfileCursor } from './ProfileCursor';
import { ProfileReadout } from './ProfileReadout';
import { ProfileTable } from './ProfileTable';
import styles from './profile.module.css';
import { pointAt } from './profilePointer';
import { profileStops } from './profileStops';
import { closeProfile, useProfileView } from './profileView';
import { usePlanPointer } from './usePlanPointer';
import { useShownProfile } from './useShownProfile';

type Props = { readonly plan: React.RefObject<HTMLElement | null> };

/** The pipe in elevation, under the plan; it follows what is done there. */
export function ProfileStrip({ plan }: Props) {
  const strip = useMemo(() => <Strip plan={plan} />, [plan]);
  return <Follows>{strip}</Follows>;
}

function Strip({ plan }: Props) {
  const asTable = useProfileView((v) => v.asTable);
  const profile = useShownProfile();
  usePlanPointer(plan, profile);
  useEffect(() => () => pointAt(null), []);
  useLetGo();
  return (
    <section className={styles.strip} aria-label="Profile">
      <div className={styles.head}>
        <PathChoice profile={profile} />
        {profile === null ? null : <ProfileReadout profile={profile} />}
        <span className={styles.roomy}>
          <Toggle
            label="Profile as a table"
            isOn={asTable}
            onPress={() => useProfileView.setState({ asTable: !asTable })}
          >
            <Table2 size={20} aria-hidden />
          </Toggle>
        </span>
        <span className={styles.tight}>
          <Action
            look="icon"
            aria-label="Lower the card for the profile"
            onPress={() => useWorkbench.setState({ cardHeight: 'low' })}
          >
            <ChevronDown size={20} aria-hidden />
          </Action>
        </span>
        <Action look="icon" aria-label="Close the profile" onPress={closeProfile}>
          <X size={20} aria-hidden />
        </Action>
      </div>
      {profile === null ? (
        <p className={styles.empty}>
          Draw the pipe first; its profile follows from the levels and depths along it.
        </p>
      ) : asTable ? (
        <TableOf profile={profile} />
      ) : (
        <ChartOf profile={profile} />
      )}
    </section>
  );
}

/** Whoever chooses a mark or a point of a pipe looks at that, and no longer at the place that was pointed at before. */
function useLetGo(): void {
  const { selected, vertex } = useWorkbench();
  useEffect(() => {
    if (selected?.kind === 'reading' || vertex !== null) pointAt(null);
  }, [selected, vertex]);
}

/** Which pipe is shown; with one alone there is nothing to choose. */
function PathChoice({ profile }: { readonly profile: PathProfile | null }) {
  const site = useSite();
  const { paths } = site;
  const name = ({ id }: (typeof paths)[number]) => words.targetName({ kind: 'path', id }, site);
  const shown = paths.find((p) => p.id === profile?.path);
  if (paths.length < 2)
    return <h2 className={styles.title}>{shown === undefined ? 'Profile' : name(shown)}</h2>;
  return (
    <div className={styles.choice}>
      <Choice
        label="Pipe of the profile"
        options={paths.map((p) => ({ id: p.id, name: name(p) }))}
        value={profile?.path ?? null}
        onChange={(path) => {
          select(null);
          pointAt(null);
          useProfileView.setState({ path });
        }}
      />
    </div>
  );
}

function TableOf({ profile }: { readonly profile: PathProfile }) {
  const site = useSite();
  const derived = useDerived();
  const stops = useMemo(() => profileStops(site, derived, profile), [site, derived, profile]);
  return <ProfileTable profile={profile} stops={stops} />;
}

function ChartOf({ profile }: { readonly profile: PathProfile }) {
  const { units } = useSite();
  const derived = useDerived();
  const box = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      setSize({ width, height });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const layout = useMemo(
    () => (size.width === 0 ? null : chartLayout(profile, derived, units, size)),
    [profile, derived, units, size],
  );
  return (
    <div ref={box} className={styles.paper}>
      {layout !== null ? (
        <>
          <ProfileChart profile={profile} layout={layout} size={size} />
          <ProfileCursor profile={profile} layout={layout} size={size} />
          <ScaleText factor={layout.scale.exaggeration} isLow={layout.isLow} />
        </>
      ) : size.width > 0 ? (
        <p className={styles.empty}>
          Nothing is known of this pipe’s depth yet. Give a point of it its invert or its depth, a cleanout
          its riser, or a locate its depth; levels of the ground come from spot levels, benchmarks and the
          rims of manholes.
        </p>
      ) : null}
    </div>
  );
}

/** How many times heights are drawn larger than lengths; in a low chart in signs. */
function ScaleText({ factor, isLow }: { readonly factor: number; readonly isLow: boolean }) {
  const said = factor === 1 ? 'Heights true to lengths' : `Heights × ${factor}`;
  return <p className={styles.scale}>{isLow ? `↕ × ${factor}` : said}</p>;
}
