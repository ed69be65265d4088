import { type SetOutPoint, setOutOf } from '@footmark/site';
import { frameTapes } from '../marks/frameTapes';
import { currentSite, derivedFrom } from '../session/siteSession';
import { goTo, select } from '../session/workbench';

/** Takes a point that sets a pipe out in hand, and shows it with the points that it is taped from. */
export function showSetOut(point: SetOutPoint): void {
  select({ kind: 'set-out', path: point.path, number: point.number });
  frameTapes(point);
}

/** Goes to where a pipe is set out, at its first point. */
export function setOutPath(path: string): void {
  const site = currentSite();
  const first = setOutOf(site, derivedFrom(site), path)?.points[0];
  if (first === undefined) return;
  goTo('marks');
  showSetOut(first);
}
