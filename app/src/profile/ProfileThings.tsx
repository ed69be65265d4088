import { stationOfVertex } from '@footmark/geometry';
import { type FeatureKind, type PathProfile, profileAt } from '@footmark/site';
import type { Palette } from '../canvas/palette';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import type { ChartLayout } from './chartLayout';
import styles from './profile.module.css';

/** Letters of what stands on a pipe, as drafted plans have them (common practice, no source). */
const LETTERS: Partial<Record<FeatureKind, string>> = {
  cleanout: 'CO',
  manhole: 'MH',
  stack: 'S',
  'floor-drain': 'FD',
  tap: 'TAP',
};

type Props = {
  readonly profile: PathProfile;
  readonly layout: ChartLayout;
  readonly palette: Palette;
  readonly bottom: number;
};

/** What stands on and over the pipe: things with a way up to the ground, and buildings. */
export function ProfileThings({ profile, layout, palette, bottom }: Props) {
  const site = useSite();
  const derived = useDerived();
  const { scale, margin, isLow } = layout;
  const on = derived.paths.get(profile.path);
  const kindsById = new Map(site.features.map((f) => [f.id, f]));
  return (
    <g className={styles.things}>
      {profile.ground.indoors.map(({ from, to, building }) => (
        <g key={building + from}>
          <rect
            x={scale.x(from)}
            width={scale.x(to) - scale.x(from)}
            y={margin.top}
            height={bottom - margin.top}
            fill={palette.ink}
            fillOpacity={0.05}
          />
          <line
            x1={scale.x(to)}
            x2={scale.x(to)}
            y1={margin.top}
            y2={bottom}
            stroke={palette.ink}
            strokeWidth={2}
          />
          {isLow ? null : (
            <text x={scale.x(from) + 6} y={margin.top + 14} fill={palette.ink}>
              {words.targetName({ kind: 'feature', id: building }, site)}
            </text>
          )}
        </g>
      ))}
      {(on?.path.vertices ?? []).map((v, i) => {
        const thing = kindsById.get(on?.tiedTo[i] ?? '');
        const letters = thing === undefined ? undefined : LETTERS[thing.kind];
        if (on === undefined || letters === undefined) return null;
        const station = stationOfVertex(on.line, i);
        const { ground, pipe } = profileAt(profile, station);
        const x = scale.x(station);
        const end = station >= profile.length - 1e-6;
        return (
          <g key={v.id}>
            {ground === null || pipe === null ? null : (
              <line
                x1={x}
                x2={x}
                y1={scale.y(ground.level)}
                y2={scale.y(pipe.invert)}
                stroke={palette.ink}
                strokeWidth={1.5}
              />
            )}
            {isLow ? null : (
              <text
                x={end ? x - 5 : x + 5}
                y={bottom - 6}
                textAnchor={end ? 'end' : 'start'}
                fill={palette.ink}
              >
                {letters}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
