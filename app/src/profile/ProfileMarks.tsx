import type { Mark, PathProfile } from '@footmark/site';
import type { Palette } from '../canvas/palette';
import { useDerived } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { type ChartLayout, tagRows } from './chartLayout';
import { heightOnPipe } from './heightOnPipe';
import styles from './profile.module.css';

const TAG = { perLetter: 8, air: 8, height: 17, rows: 2 } as const;

/** The upper row's left end belongs to what is said of the heights. */
const SCALE_TEXT = { row: 1, from: 0, to: 150 } as const;

type Props = { readonly profile: PathProfile; readonly layout: ChartLayout; readonly palette: Palette };

/** The marks of a pipe: a dot on it, and above the chart what is painted. The chosen one is brought out. */
export function ProfileMarks({ profile, layout: { scale, margin, isLow }, palette }: Props) {
  const { marks } = useDerived();
  const selected = useWorkbench((w) => w.selected);
  const here = marksOn(profile, marks);
  const isChosen = (mark: Mark) => selected?.kind === 'reading' && selected.id === mark.reading.id;
  const tags = here.map(({ mark, station }) => ({
    x: scale.x(station),
    width: TAG.perLetter * mark.label.length + TAG.air,
  }));
  // the chosen one first, then what is wrong with the pipe, with the flow
  const order = here.map((_, i) => i).sort((a, b) => rank(here[a]?.mark) - rank(here[b]?.mark));
  function rank(mark: Mark | undefined): number {
    return mark === undefined ? 2 : isChosen(mark) ? 0 : mark.reading.passed ? 2 : 1;
  }
  const rows = tagRows(tags, isLow ? 1 : TAG.rows, order, [SCALE_TEXT]);
  return (
    <g className={styles.marks}>
      {here.map(({ mark, station }, i) => {
        const [x, row] = [scale.x(station), rows[i]?.row ?? null];
        const height = heightOnPipe(profile, station);
        const y = height === null ? null : scale.y(height);
        const chosen = isChosen(mark);
        const colour = chosen ? palette.chosen : palette.sewer;
        const base = margin.top - 6 - (row ?? 0) * TAG.height;
        return (
          <g key={mark.reading.id} data-mark={mark.label} data-chosen={chosen || undefined}>
            {y === null ? null : (
              <line
                x1={x}
                x2={x}
                y1={row === null ? y - 8 : base + 2}
                y2={y}
                stroke={colour}
                strokeWidth={chosen ? 1.75 : 0.75}
                strokeDasharray={chosen ? undefined : '2 3'}
              />
            )}
            {y === null ? null : (
              <circle
                cx={x}
                cy={y}
                r={chosen ? 6 : 4}
                fill={chosen ? palette.chosen : palette.paper}
                stroke={colour}
                strokeWidth={2}
              />
            )}
            {row === null ? null : (
              <text x={x} y={base} textAnchor="middle" fill={colour} fontWeight={chosen ? 700 : 600}>
                {mark.label}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** The marks that have a place on a pipe, with its station. */
export function marksOn(
  { path }: PathProfile,
  marks: readonly Mark[],
): readonly { readonly mark: Mark; readonly station: number }[] {
  return marks.flatMap((mark) => (mark.place?.path === path ? [{ mark, station: mark.place.station }] : []));
}
