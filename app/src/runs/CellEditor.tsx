import { type KeyboardEvent, useLayoutEffect, useRef, useState } from 'react';
import type { GridMove } from './gridPlace';
import styles from './ReadingGrid.module.css';
import type { Column } from './readingColumns';
import { useTypeAhead } from './useTypeAhead';

type Props = {
  readonly label: string;
  readonly column: Column;
  readonly text: string;
  /** A letter that was typed on the cell: it takes the place of what is there. */
  readonly begunWith: string | undefined;
  readonly byPointer: boolean;
  readonly problemId: string | undefined;
  readonly onDone: (text: string) => void;
  /** Goes on in another cell; false where the table ends. */
  readonly onMove: (move: GridMove) => boolean;
  readonly onDrop: () => void;
};

/** The field of the cell that is being typed in. Enter goes down, Tab to the next, Escape takes back what was typed. */
export function CellEditor({ column, begunWith, byPointer, onDone, onMove, onDrop, ...rest }: Props) {
  const [text, setText] = useState(column.options === undefined ? (begunWith ?? rest.text) : rest.text);
  const field = useRef<HTMLInputElement & HTMLSelectElement>(null);
  const isDropped = useRef(false);
  const typeAhead = useTypeAhead(column.options ?? [], setText);

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the field comes
  useLayoutEffect(() => {
    const element = field.current;
    element?.focus();
    if (column.options === undefined) {
      if (begunWith === undefined) element?.select();
    } else if (begunWith !== undefined) typeAhead(begunWith);
    else if (byPointer) openPicker(element);
  }, []);

  const done = () => {
    if (!isDropped.current) onDone(text);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    event.stopPropagation();
    const go = (move: GridMove, orLeave = false) => {
      done();
      if (onMove(move) || !orLeave) event.preventDefault();
    };
    if (event.key === 'Enter') go(event.shiftKey ? 'up' : 'down');
    else if (event.key === 'Tab') go(event.shiftKey ? 'previous' : 'next', true);
    else if (event.key === 'Escape') {
      isDropped.current = true;
      onDrop();
    } else if (column.options !== undefined) {
      if (isLetter(event) && typeAhead(event.key)) event.preventDefault();
    } else if (event.key === 'ArrowDown') go('down');
    else if (event.key === 'ArrowUp') go('up');
  };
  const common = {
    ref: field,
    value: text,
    onBlur: done,
    onKeyDown,
    'aria-label': rest.label,
    'aria-invalid': rest.problemId !== undefined,
    'aria-describedby': rest.problemId,
  };
  return column.options === undefined ? (
    <input
      {...common}
      className={styles.field}
      type="text"
      inputMode={column.isNumber ? 'decimal' : 'text'}
      autoComplete="off"
      maxLength={5000}
      onChange={(event) => setText(event.target.value)}
    />
  ) : (
    <select {...common} className={styles.field} onChange={(event) => setText(event.target.value)}>
      {column.options.map((option) => (
        <option key={option.id} value={option.id}>
          {option.name}
        </option>
      ))}
    </select>
  );
}

function isLetter({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
  return key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey;
}

/** A tap on a cell that is chosen from opens its list at once, where the browser can. */
function openPicker(element: HTMLSelectElement | null): void {
  try {
    element?.showPicker();
  } catch {
    // the browser wants a tap on the field itself
  }
}
