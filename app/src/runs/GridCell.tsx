import type { Reading, Run } from '@footmark/site';
import { memo, useLayoutEffect, useRef } from 'react';
import { CellEditor } from './CellEditor';
import { commitCell } from './commitCell';
import type { GridMove, GridPlace } from './gridPlace';
import styles from './ReadingGrid.module.css';
import type { Column } from './readingColumns';
import { type CellDraft, keepCell } from './runDrafts';

export type GridHand = {
  readonly put: (place: GridPlace) => void;
  /** From where the hand is; false where the table ends. */
  readonly move: (move: GridMove) => boolean;
};

type Props = {
  readonly run: Run;
  readonly reading: Reading;
  readonly row: number;
  readonly column: Column;
  readonly unit: 'ft' | 'm';
  /** Null where the hand is in another cell. */
  readonly place: GridPlace | null;
  readonly draft: CellDraft | undefined;
  /** Of what says why the draft is no value. */
  readonly problemId: string;
  readonly hand: GridHand;
};

/** One fact of one reading: shown, held, or typed in. */
export const GridCell = memo(function GridCell({
  run,
  reading,
  row,
  column,
  unit,
  place,
  draft,
  problemId,
  hand,
}: Props) {
  const cell = useRef<HTMLTableCellElement>(null);
  const mode = place?.mode;
  useLayoutEffect(() => {
    if (mode === 'cell' && document.activeElement !== cell.current) cell.current?.focus();
  }, [mode]);
  const at = { row, column: column.id };
  const text = draft?.text ?? column.text(reading, unit);
  const shown = draft?.text ?? column.shown?.(reading, unit) ?? text;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the table has the keys
    <td
      ref={cell}
      className={styles.cell}
      tabIndex={mode === 'edit' || place === null ? -1 : 0}
      data-column={column.id}
      data-number={column.isNumber}
      data-stuck={column.id === 'passed' && !reading.passed}
      aria-invalid={draft !== undefined}
      aria-describedby={draft === undefined ? undefined : problemId}
      onFocus={(event) => {
        if (event.target === event.currentTarget && mode !== 'cell') hand.put({ ...at, mode: 'cell' });
      }}
      onClick={() => mode !== 'edit' && hand.put({ ...at, mode: 'edit', byPointer: true })}
    >
      {mode === 'edit' ? (
        <CellEditor
          label={`${run.letter}${reading.number} ${column.name.toLowerCase()}`}
          column={column}
          text={text}
          begunWith={place?.begunWith}
          byPointer={place?.byPointer === true}
          problemId={draft === undefined ? undefined : problemId}
          onDone={(typed) => commitCell(run, reading.id, column, typed)}
          onMove={hand.move}
          onDrop={() => {
            keepCell(reading.id, column.id, null);
            hand.put({ ...at, mode: 'cell' });
          }}
        />
      ) : (
        <span className={styles.shown}>{shown}</span>
      )}
    </td>
  );
});
