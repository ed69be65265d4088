import { locate } from '@footmark/geometry';
import { FOOT_M, type PathProfile, profileAt, type Target } from '@footmark/site';
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { bringIntoView } from '../canvas/planView';
import { useDerived, useSite } from '../session/siteSession';
import type { ChartLayout } from './chartLayout';
import { chooseStop } from './chooseStop';
import { marksOn } from './ProfileMarks';
import styles from './profile.module.css';
import { pointAt, useProfilePointer } from './profilePointer';
import { readoutOf } from './profileText';
import { useChosenStation } from './useChosenStation';

/** How near (px) a press must come to a mark. */
const REACH_PX = { mouse: 10, pen: 16, touch: 24 } as const;
/** What Shift makes of a step. */
const FAR = 10;

type Props = {
  readonly profile: PathProfile;
  readonly layout: ChartLayout;
  readonly size: { readonly width: number; readonly height: number };
};

/** The place that is shown on the plan, under a finger, a pointer or the arrow keys. A press on a mark chooses it. */
export function ProfileCursor({ profile, layout: { scale, margin }, size }: Props) {
  const site = useSite();
  const derived = useDerived();
  const place = useProfilePointer((p) => p.place);
  const box = useRef<HTMLDivElement>(null);
  const chosen = useChosenStation(profile);
  const station = place?.path === profile.path ? Math.min(place.station, profile.length) : null;
  // with nothing pointed at, what is chosen is the place: what a key goes on from, and a reader says
  const from = station ?? chosen?.station ?? 0;
  const isShown = station !== null || chosen?.of === 'point';
  const here = marksOn(profile, derived.marks).toSorted((a, b) => a.station - b.station);
  const step = site.units.length === 'm' ? 0.25 : FOOT_M;

  const goTo = (to: number) => {
    pointAt({ path: profile.path, station: Math.min(profile.length, Math.max(0, to)) });
  };
  const showOnPlan = (at: number) => {
    const line = derived.paths.get(profile.path)?.line;
    if (line !== undefined) bringIntoView(locate(line, at).point);
  };
  const xOf = (event: PointerEvent) => event.clientX - (box.current?.getBoundingClientRect().left ?? 0);
  const follow = (event: PointerEvent) => goTo(scale.stationAt(xOf(event)));
  const press = (event: PointerEvent) => {
    const x = xOf(event);
    const reach = event.pointerType === 'touch' ? REACH_PX.touch : REACH_PX.mouse;
    const near = here
      .map((m) => ({ ...m, away: Math.abs(scale.x(m.station) - x) }))
      .filter((m) => m.away <= reach)
      .sort((a, b) => a.away - b.away)[0];
    if (near === undefined) {
      follow(event);
      showOnPlan(scale.stationAt(x));
      return;
    }
    goTo(near.station);
    chooseStop(targetOf(near));
    showOnPlan(near.station);
  };
  const onKey = (event: KeyboardEvent) => {
    const at = from;
    const stride = event.shiftKey ? FAR * step : step;
    const to = {
      ArrowRight: at + stride,
      ArrowUp: at + stride,
      ArrowLeft: at - stride,
      ArrowDown: at - stride,
      Home: 0,
      End: profile.length,
      PageDown: here.find((m) => m.station > at + 1e-6)?.station ?? profile.length,
      PageUp: here.findLast((m) => m.station < at - 1e-6)?.station ?? 0,
    }[event.key];
    if (to !== undefined) {
      event.preventDefault();
      goTo(to);
      showOnPlan(Math.min(profile.length, Math.max(0, to)));
      return;
    }
    if (event.key !== 'Enter') return;
    const near = here.find((m) => Math.abs(m.station - at) <= step / 2);
    if (near !== undefined) chooseStop(targetOf(near));
  };

  const at = profileAt(profile, from);
  const said = readoutOf(at, profile, site.units)
    .map(({ label, value }) => `${label} ${value}`)
    .join(', ');
  return (
    <div
      ref={box}
      className={styles.cursor}
      role="slider"
      tabIndex={0}
      aria-label="Place on the profile"
      aria-valuemin={0}
      aria-valuemax={Math.round(profile.length / step)}
      aria-valuenow={Math.round(from / step)}
      aria-valuetext={said}
      onKeyDown={onKey}
      onFocus={() => {
        if (station === null) goTo(from);
      }}
      onPointerDown={(event) => {
        if (event.pointerType !== 'mouse') event.currentTarget.setPointerCapture(event.pointerId);
        follow(event);
      }}
      onPointerMove={follow}
      onPointerUp={press}
      onPointerLeave={(event) => {
        if (event.pointerType === 'mouse' && document.activeElement !== box.current) pointAt(null);
      }}
    >
      {!isShown ? null : (
        <svg className={styles.chart} width={size.width} height={size.height} aria-hidden>
          <line
            className={styles.here}
            x1={scale.x(from)}
            x2={scale.x(from)}
            y1={margin.top}
            y2={size.height - margin.bottom}
          />
          {at.pipe === null ? null : (
            <circle className={styles.hereDot} cx={scale.x(from)} cy={scale.y(at.pipe.invert)} r={5} />
          )}
        </svg>
      )}
    </div>
  );
}

function targetOf({ mark }: ReturnType<typeof marksOn>[number]): Target {
  return { kind: 'reading', run: mark.run.id, id: mark.reading.id };
}
