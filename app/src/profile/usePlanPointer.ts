import { stationOf } from '@footmark/geometry';
import type { PathProfile } from '@footmark/site';
import { type RefObject, useEffect } from 'react';
import { screenToPlan } from '../canvas/camera';
import { usePlanView } from '../canvas/planView';
import { useDerived } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { pointAt } from './profilePointer';

/** How near (px) to the pipe a pointer or a finger on the plan means a place of it. */
const REACH_PX = { mouse: 14, touch: 28 } as const;

/** Shows on the profile where a pointer or a finger is on its pipe in the plan; not while something is being drawn. */
export function usePlanPointer(plan: RefObject<HTMLElement | null>, profile: PathProfile | null): void {
  const derived = useDerived();
  const line = derived.paths.get(profile?.path ?? '')?.line;
  const path = profile?.path;
  useEffect(() => {
    const element = plan.current;
    if (element === null || line === undefined || path === undefined) return;
    const follow = (event: PointerEvent) => {
      const { camera, size } = usePlanView.getState();
      if (camera === null || useWorkbench.getState().tool !== null) return;
      const { left, top } = element.getBoundingClientRect();
      const at = screenToPlan(camera, size, { x: event.clientX - left, y: event.clientY - top });
      const { station, distance } = stationOf(line, at);
      const isTouch = event.pointerType === 'touch';
      const near = distance * camera.pxPerMetre <= REACH_PX[isTouch ? 'touch' : 'mouse'];
      if (near) pointAt({ path, station });
      else if (!isTouch || event.type === 'pointerdown') pointAt(null);
    };
    const leave = (event: PointerEvent) => {
      if (event.pointerType === 'mouse') pointAt(null);
    };
    element.addEventListener('pointermove', follow);
    element.addEventListener('pointerdown', follow);
    element.addEventListener('pointerleave', leave);
    return () => {
      element.removeEventListener('pointermove', follow);
      element.removeEventListener('pointerdown', follow);
      element.removeEventListener('pointerleave', leave);
    };
  }, [plan, line, path]);
}
