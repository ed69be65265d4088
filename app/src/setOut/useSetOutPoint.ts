import { type SetOut, type SetOutPoint, setOutOf } from '@footmark/site';
import { useMemo } from 'react';
import { useDerived, useSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';

/** The point that is being set out with the pipe that it is of; null when none is, or it is gone. */
export function useSetOutPoint(): { readonly setOut: SetOut; readonly point: SetOutPoint } | null {
  const site = useSite();
  const derived = useDerived();
  const selected = useWorkbench((w) => w.selected);
  return useMemo(() => {
    if (selected?.kind !== 'set-out') return null;
    const setOut = setOutOf(site, derived, selected.path);
    const point = setOut?.points.find((p) => p.number === selected.number);
    return setOut === null || point === undefined ? null : { setOut, point };
  }, [site, derived, selected]);
}
