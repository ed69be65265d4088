import type { Derived, PathProfile, Target } from '@footmark/site';
import { useEffect } from 'react';
import { useDerived } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { useProfileView } from './profileView';

/** The profile of the pipe that is chosen, or that what is chosen lies on; else of the one seen last, else of the best known one. */
export function useShownProfile(): PathProfile | null {
  const derived = useDerived();
  const selected = useWorkbench((w) => w.selected);
  const last = useProfileView((v) => v.path);
  const chosen = pathOf(selected, derived);
  const path = chosen ?? last ?? '';
  // what was looked at stays when it is let go of
  useEffect(() => {
    if (chosen !== null) useProfileView.setState({ path: chosen });
  }, [chosen]);
  return derived.profiles.get(path) ?? bestKnown(derived);
}

function pathOf(selected: Target | null, derived: Derived): string | null {
  switch (selected?.kind) {
    case 'path':
      return derived.profiles.has(selected.id) ? selected.id : null;
    case 'set-out':
      return selected.path;
    case 'reading':
      return derived.marks.find((m) => m.reading.id === selected.id)?.place?.path ?? null;
    case 'run':
      return derived.routes.get(selected.id)?.legs[0]?.path ?? null;
    default:
      return null;
  }
}

function bestKnown({ profiles }: Derived): PathProfile | null {
  const all = [...profiles.values()];
  return all.reduce<PathProfile | null>(
    (best, one) => (best === null || one.points.length > best.points.length ? one : best),
    null,
  );
}
