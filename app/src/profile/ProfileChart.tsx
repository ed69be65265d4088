import { stationText } from '@footmark/drawing';
import type { PathProfile } from '@footmark/site';
import { type Palette, palettes } from '../canvas/palette';
import { usePlanView } from '../canvas/planView';
import { useSite } from '../session/siteSession';
import type { ChartLayout } from './chartLayout';
import { ProfileCrossings } from './ProfileCrossings';
import { ProfileMarks } from './ProfileMarks';
import { ProfileThings } from './ProfileThings';
import styles from './profile.module.css';

/** Pixels to a millimetre of pen: lines as heavy as on the plan. */
const PX_PER_PEN_MM = 4.2;

/** Half of what a station takes below the chart. */
const HALF_STATION_PX = 20;

type Props = {
  readonly profile: PathProfile;
  readonly layout: ChartLayout;
  readonly size: { readonly width: number; readonly height: number };
};

/** The pipe in elevation, on ruled paper. */
export function ProfileChart({ profile, layout, size }: Props) {
  const palette = palettes[usePlanView((v) => v.theme)];
  return (
    <svg className={styles.chart} width={size.width} height={size.height} aria-hidden>
      <Ruling layout={layout} size={size} profile={profile} palette={palette} />
      <Lines layout={layout} palette={palette} />
      <ProfileCrossings profile={profile} layout={layout} palette={palette} />
      <ProfileThings
        profile={profile}
        layout={layout}
        palette={palette}
        bottom={size.height - layout.margin.bottom}
      />
      <KnownPlaces profile={profile} layout={layout} palette={palette} />
      <ProfileMarks profile={profile} layout={layout} palette={palette} />
    </svg>
  );
}

type RulingProps = Props & { readonly palette: Palette };

/** Heights and stations, ruled through. */
function Ruling({ layout: { scale, margin }, size, profile, palette }: RulingProps) {
  const { units } = useSite();
  const [left, right] = [scale.x(0), scale.x(profile.length)];
  const [top, bottom] = [margin.top, size.height - margin.bottom];
  const below = profile.heights === 'below-ground';
  return (
    <g className={styles.ruling}>
      {scale.heights.map(({ height, text }) => (
        <g key={height}>
          <line x1={left} x2={right} y1={scale.y(height)} y2={scale.y(height)} stroke={palette.grid} />
          <text x={left - 8} y={scale.y(height)} textAnchor="end" dominantBaseline="central">
            {below ? text.replace(/^[−-]/, '') : text}
          </text>
        </g>
      ))}
      {scale.stations.map((station) => (
        <g key={station}>
          <line x1={scale.x(station)} x2={scale.x(station)} y1={top} y2={bottom} stroke={palette.grid} />
          <line
            x1={scale.x(station)}
            x2={scale.x(station)}
            y1={bottom - 4}
            y2={bottom + 4}
            stroke={palette.ink}
          />
          <text {...anchorAt(scale.x(station), left, size.width)} y={size.height - 5}>
            {stationText(station, units)}
          </text>
        </g>
      ))}
      <line x1={left} x2={right} y1={bottom} y2={bottom} stroke={palette.ink} />
      <text className={styles.unit} x={4} y={size.height - 5}>
        {units.length === 'm' ? 'm' : 'ft'}
        {below ? ' down' : ''}
      </text>
    </g>
  );
}

/** How a station stands below its tick: in the middle of it, at the ends of the chart within the paper. */
function anchorAt(x: number, left: number, width: number) {
  if (x <= left) return { x, textAnchor: 'start' } as const;
  return x > width - HALF_STATION_PX
    ? ({ x: width - 2, textAnchor: 'end' } as const)
    : ({ x, textAnchor: 'middle' } as const);
}

/** The drawing's own lines and fills. */
function Lines({
  layout: { drawing, scale },
  palette,
}: {
  readonly layout: ChartLayout;
  readonly palette: Palette;
}) {
  return (
    <g>
      {drawing.lines.map((line) => {
        const d = line.points
          .map((p, k) => `${k === 0 ? 'M' : 'L'}${scale.x(p.x).toFixed(2)} ${scale.y(p.y).toFixed(2)}`)
          .join('');
        const { stroke, fill } = line;
        return (
          <path
            key={`${stroke?.ink ?? fill?.ink} ${d}`}
            d={line.closed ? `${d}Z` : d}
            fill={fill === undefined ? 'none' : palette[fill.ink]}
            fillOpacity={fill?.opacity}
            stroke={stroke === undefined ? 'none' : palette[stroke.ink]}
            strokeWidth={stroke === undefined ? undefined : stroke.weight * PX_PER_PEN_MM}
            strokeDasharray={stroke?.dash?.map((mm) => mm * PX_PER_PEN_MM).join(' ')}
            strokeLinejoin="round"
          />
        );
      })}
    </g>
  );
}

/** Where the invert was measured; hollow where the line is not drawn through it. */
function KnownPlaces({ profile, layout: { scale }, palette }: Omit<RulingProps, 'size'>) {
  return (
    <g>
      {profile.points.map((point) => (
        <circle
          key={point.station}
          cx={scale.x(point.station)}
          cy={scale.y(point.invert)}
          r={3.5}
          fill={profile.firm.includes(point) ? palette.sewer : palette.paper}
          stroke={palette.sewer}
          strokeWidth={1.5}
        />
      ))}
    </g>
  );
}
