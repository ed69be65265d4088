import { create } from 'zustand';
import type { ColumnId } from './readingColumns';

/** A text of a cell that could not be taken, and why. */
export type CellDraft = { readonly text: string; readonly problem: string };

/** What is refused or unfinished in the cells of one reading. */
export type RowDrafts = Readonly<Partial<Record<ColumnId, CellDraft>>>;

type RunDrafts = {
  /** By reading. */
  readonly cells: Readonly<Record<string, RowDrafts>>;
  /** By run: the text that waits to be taken over as readings. */
  readonly pasted: Readonly<Record<string, string>>;
};

/** What has been typed or pasted for runs and is no reading yet. It outlives the card, so that a look at the plan loses nothing. */
export const useRunDrafts = create<RunDrafts>()(() => ({ cells: {}, pasted: {} }));

/** Keeps what a cell could not take; null: it holds its value again. */
export function keepCell(reading: string, column: ColumnId, draft: CellDraft | null): void {
  useRunDrafts.setState(({ cells }) => {
    const { [column]: _, ...others } = cells[reading] ?? {};
    return { cells: { ...cells, [reading]: draft === null ? others : { ...others, [column]: draft } } };
  });
}

/** Opens the leaf that takes rows over, with what is pasted; null closes it. */
export function pasteInto(run: string, text: string | null): void {
  useRunDrafts.setState(({ pasted: { [run]: _, ...others } }) => ({
    pasted: text === null ? others : { ...others, [run]: text },
  }));
}
