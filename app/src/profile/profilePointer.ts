import { create } from 'zustand';

/** A place of a pipe: plan metres from its start. */
export type PipePlace = { readonly path: string; readonly station: number };

/** The place that a finger, a pointer or a key shows, on the profile and on the plan alike; null while none does. */
export const useProfilePointer = create<{ readonly place: PipePlace | null }>()(() => ({ place: null }));

export function pointAt(place: PipePlace | null): void {
  const before = useProfilePointer.getState().place;
  if (before?.path === place?.path && before?.station === place?.station) return;
  useProfilePointer.setState({ place });
}
