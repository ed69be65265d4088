import { create } from 'zustand';

type Comparison = {
  readonly isOpen: boolean;
  /** By the ids of `comparableVisits`; null: not chosen, the two latest then. */
  readonly before: string | null;
  readonly after: string | null;
};

/** Which visits lie side by side. It outlives the card, for one looks at a mark and comes back. */
export const useComparison = create<Comparison>()(() => ({ isOpen: false, before: null, after: null }));

export function openComparison(isOpen: boolean): void {
  useComparison.setState({ isOpen, before: null, after: null });
}
