import type { Finding, Reading, Run } from '@footmark/site';
import { memo, useId, useLayoutEffect, useRef } from 'react';
import cards from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { GridCell, type GridHand } from './GridCell';
import type { GridPlace } from './gridPlace';
import { ReadingForm } from './ReadingForm';
import styles from './ReadingGrid.module.css';
import type { Column } from './readingColumns';
import { type RowDrafts, useRunDrafts } from './runDrafts';

type Props = {
  readonly run: Run;
  readonly reading: Reading;
  readonly row: number;
  readonly columns: readonly Column[];
  readonly unit: 'ft' | 'm';
  readonly about: readonly Finding[] | undefined;
  /** Null where the hand is in another row. */
  readonly place: GridPlace | null;
  readonly isOpen: boolean;
  readonly onToggle: (reading: string) => void;
  readonly hand: GridHand;
};

const NONE: RowDrafts = {};

/** One reading of the table: its cells, what is the matter with it, and all of it when it is open. */
export const GridRow = memo(
  function GridRow({ run, reading, row, columns, unit, about, place, isOpen, onToggle, hand }: Props) {
    const id = useId();
    const drafts = useRunDrafts((d) => d.cells[reading.id] ?? NONE);
    const wrong = columns.filter((column) => drafts[column.id] !== undefined);
    return (
      <>
        <tr aria-rowindex={row + 2}>
          <th scope="row" className={styles.mark}>
            <Opener
              label={`${run.letter}${reading.number}`}
              place={place?.column === 'mark' ? place : null}
              isOpen={isOpen}
              onPress={() => onToggle(reading.id)}
              onFocus={() => hand.put({ row, column: 'mark', mode: 'cell' })}
            />
          </th>
          {columns.map((column) => (
            <GridCell
              key={column.id}
              run={run}
              reading={reading}
              row={row}
              column={column}
              unit={unit}
              place={place?.column === column.id ? place : null}
              draft={drafts[column.id]}
              problemId={`${id}-${column.id}`}
              hand={hand}
            />
          ))}
        </tr>
        {about === undefined && wrong.length === 0 && !isOpen ? null : (
          <tr>
            <td className={styles.below} colSpan={columns.length + 1}>
              {wrong.map((column) => (
                <p key={column.id} id={`${id}-${column.id}`} className={styles.problem}>
                  {column.name}: {drafts[column.id]?.problem}
                </p>
              ))}
              {about?.map((finding) => (
                <FindingRow key={finding.code} finding={finding} />
              ))}
              {isOpen ? <ReadingForm run={run} reading={reading} /> : null}
            </td>
          </tr>
        )}
      </>
    );
  },
  // a run is another with each reading that changes; a row looks at its own and at its run's letter, save when it is open
  (a, b) =>
    !a.isOpen &&
    !b.isOpen &&
    a.reading === b.reading &&
    a.row === b.row &&
    a.columns === b.columns &&
    a.unit === b.unit &&
    a.about === b.about &&
    a.place === b.place &&
    a.run.letter === b.run.letter,
);

type OpenerProps = {
  readonly label: string;
  readonly place: GridPlace | null;
  readonly isOpen: boolean;
  readonly onPress: () => void;
  readonly onFocus: () => void;
};

function Opener({ label, place, isOpen, onPress, onFocus }: OpenerProps) {
  const button = useRef<HTMLButtonElement>(null);
  const isHeld = place?.mode === 'cell';
  useLayoutEffect(() => {
    if (isHeld && document.activeElement !== button.current) button.current?.focus();
  }, [isHeld]);
  return (
    <button
      ref={button}
      type="button"
      className={styles.opener}
      tabIndex={place === null ? -1 : 0}
      aria-expanded={isOpen}
      aria-label={`${label}, all of it`}
      onClick={onPress}
      onFocus={() => !isHeld && onFocus()}
    >
      <span className={cards.paint}>{label}</span>
    </button>
  );
}
