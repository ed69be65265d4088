import type { Finding, Run } from '@footmark/site';
import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { useMoreInSight } from '../cards/useMoreInSight';
import { useSite } from '../session/siteSession';
import { counterUnit } from './counterUnit';
import type { GridHand } from './GridCell';
import { GridRow } from './GridRow';
import { type GridMove, type GridPlace, movedInGrid } from './gridPlace';
import styles from './ReadingGrid.module.css';
import { readingColumns } from './readingColumns';

type Props = {
  readonly run: Run;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  readonly isRoomy: boolean;
};

const KEY_MOVES: Readonly<Record<string, GridMove>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
  Home: 'row-start',
  End: 'row-end',
};

/** The readings as a table that is typed in. Arrows move on it, a letter or Enter goes into a cell; in a cell Enter goes down and Tab on. */
export function ReadingGrid({ run, findings, isRoomy }: Props) {
  const unit = counterUnit(useSite().units);
  const [place, setPlace] = useState<GridPlace>({ row: 0, column: 'mark', mode: 'rest' });
  const [open, setOpen] = useState<string | null>(null);
  const { shown, end, reach } = useMoreInSight<HTMLTableSectionElement>(run.readings.length);
  const columns = useMemo(() => readingColumns.filter((c) => isRoomy || !c.whenRoomy), [isRoomy]);

  const move = (way: GridMove): boolean => {
    const size = { rows: run.readings.length, columns: ['mark' as const, ...columns.map((c) => c.id)] };
    const to = movedInGrid(place, way, size);
    // at the table's end the hand stays, out of the cell
    if (to === null)
      setPlace({ row: place.row, column: place.column, mode: isLeaving(way) ? 'rest' : 'cell' });
    else {
      reach(to.row);
      setPlace({ ...to, mode: place.mode });
    }
    return to !== null;
  };
  const latest = useRef(move);
  latest.current = move;
  const hand = useMemo((): GridHand => ({ put: setPlace, move: (way) => latest.current(way) }), []);
  const toggle = useMemo(() => (id: string) => setOpen((now) => (now === id ? null : id)), []);

  const onKeyDown = (event: KeyboardEvent) => {
    if (place.mode !== 'cell' || event.ctrlKey || event.metaKey || event.altKey) return;
    if (!isOfGrid(event.target)) return;
    const way = KEY_MOVES[event.key];
    if (way !== undefined) move(way);
    else if (place.column === 'mark') return;
    else if (event.key === 'Enter' || event.key === 'F2' || event.key === ' ')
      setPlace({ row: place.row, column: place.column, mode: 'edit' });
    else if (event.key === 'Backspace' || event.key === 'Delete')
      setPlace({ row: place.row, column: place.column, mode: 'edit', begunWith: '' });
    else if (event.key.length === 1)
      setPlace({ row: place.row, column: place.column, mode: 'edit', begunWith: event.key });
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const row = Math.min(place.row, run.readings.length - 1);
  return (
    <table
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table that is typed in is a grid, as in ARIA's own examples
      role="grid"
      className={styles.grid}
      aria-label={`Readings of run ${run.letter}`}
      aria-rowcount={run.readings.length + 1}
      onKeyDown={onKeyDown}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setPlace((p) => ({ ...p, mode: 'rest' }));
      }}
    >
      <thead>
        <tr aria-rowindex={1}>
          <th scope="col" className={styles.markHead}>
            Mark
          </th>
          {columns.map(({ id, name, isNumber }) => (
            <th key={id} scope="col" data-column={id} data-number={isNumber}>
              {isNumber ? `${name}, ${unit}` : name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {run.readings.slice(0, shown).map((reading, i) => (
          <GridRow
            key={reading.id}
            run={run}
            reading={reading}
            row={i}
            columns={columns}
            unit={unit}
            about={findings.get(reading.id)}
            place={i === row ? place : null}
            isOpen={open === reading.id}
            onToggle={toggle}
            hand={hand}
          />
        ))}
      </tbody>
      {shown < run.readings.length ? <tfoot ref={end} aria-hidden /> : null}
    </table>
  );
}

/** Tab goes on to what stands before or behind the table. */
function isLeaving(move: GridMove): boolean {
  return move === 'next' || move === 'previous';
}

/** Not a field of an open row. */
function isOfGrid(target: EventTarget): boolean {
  return target instanceof HTMLElement && target.closest('input, select, textarea, form') === null;
}
