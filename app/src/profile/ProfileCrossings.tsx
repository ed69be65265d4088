import { type Ink, services } from '@footmark/drawing';
import type { Feature, PathProfile } from '@footmark/site';
import type { Palette } from '../canvas/palette';
import { useSite } from '../session/siteSession';
import type { ChartLayout } from './chartLayout';
import styles from './profile.module.css';

/** A service is not drawn smaller than this (px). */
const LEAST_RADIUS_PX = 4;
const LETTERS_PX = 30;

type Props = { readonly profile: PathProfile; readonly layout: ChartLayout; readonly palette: Palette };

/** The services and mains that cross the pipe, each cut through, with the letters of its line on the plan. */
export function ProfileCrossings({ profile, layout: { scale, crossings, isLow }, palette }: Props) {
  const { features } = useSite();
  return (
    <g className={styles.things}>
      {crossings.map(({ feature, station, top, diameter }) => {
        const crossed = features.find((f) => f.id === feature);
        if (top === null || crossed === undefined) return null;
        const colour = palette[inkOf(crossed)];
        const radius = (px: number) => Math.max(LEAST_RADIUS_PX, px);
        const ry = radius((scale.y(top - diameter) - scale.y(top)) / 2);
        const x = scale.x(station);
        const atEnd = x > scale.x(profile.length) - LETTERS_PX;
        return (
          <g key={`${feature}/${station}`}>
            <ellipse
              cx={x}
              cy={scale.y(top) + ry}
              rx={radius((scale.x(diameter) - scale.x(0)) / 2)}
              ry={ry}
              fill={palette.paper}
              stroke={colour}
              strokeWidth={2.5}
            />
            {isLow ? null : (
              <text
                x={atEnd ? x - 9 : x + 9}
                y={scale.y(top) + ry}
                textAnchor={atEnd ? 'end' : 'start'}
                dominantBaseline="central"
                fill={colour}
              >
                {lettersOf(crossed)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function inkOf(crossed: Feature): Ink {
  if (crossed.kind !== 'service') return 'sewer';
  return crossed.fields.carries === undefined ? 'ink' : services[crossed.fields.carries].ink;
}

function lettersOf(crossed: Feature): string {
  if (crossed.kind !== 'service') return 'SS';
  return crossed.fields.carries === undefined ? '?' : services[crossed.fields.carries].letters;
}
