import { useMemo } from 'react';
import type { WayOnPlan } from '../canvas/overlay';
import { useDerived, useSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { shownWays, useWays } from './waysSession';

const NONE: readonly WayOnPlan[] = [];

/** The ways on the plan while their card is open, numbered as in its list. */
export function useWaysOnPlan(): readonly WayOnPlan[] {
  const site = useSite();
  const { paths } = useDerived();
  const session = useWays();
  const isOpen = useWorkbench((w) => w.leaf === 'reroute');
  return useMemo(() => {
    if (!isOpen) return NONE;
    return shownWays(session, site).flatMap((way, i): readonly WayOnPlan[] => {
      const line = way.route?.points ?? paths.get(way.path.id)?.points;
      const isChosen = way.id === session.chosen;
      // several ways on one line: that of the old pipe, and a route that is bored too
      const shown = isChosen || way.is === 'new';
      return line === undefined || !shown ? [] : [{ line, number: i + 1, isChosen }];
    });
  }, [site, paths, session, isOpen]);
}
