import { type SetOut, type SetOutPoint, setOutOf } from '@footmark/site';
import { useMemo } from 'react';
import { useDerived, useSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';

/** The point that is being set out with the pipe that it is of; null when none is, or it is gone. */
export function useSetOutPoint(): { readonly setOut: SetOut; readonly point: SetOutPoint } | null {
  const site = useSite();
  const derived = useDerived();
  const chosen = useWorkbench((w) => w.setOut);
  return useMemo(() => {
    const setOut = chosen === null ? null : setOutOf(site, derived, chosen.path);
    const point = setOut?.points.find((p) => p.number === chosen?.number);
    return setOut === null || point === undefined ? null : { setOut, point };
  }, [site, derived, chosen]);
}
