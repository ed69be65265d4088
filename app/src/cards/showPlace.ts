import { refKey, setOutOf, type Target } from '@footmark/site';
import { bringIntoView } from '../canvas/planView';
import { frameDig } from '../dig/showDig';
import { currentSite, derivedFrom } from '../session/siteSession';
import { show } from '../session/workbench';

/** Shows what something is about: its card, and its place on the plan. */
export function showPlace(target: Target): void {
  show(target);
  if (target.kind === 'dig') frameDig(target.id);
  else {
    const place = placeOf(target);
    if (place !== undefined) bringIntoView(place);
  }
}

function placeOf(target: Exclude<Target, { kind: 'dig' }>) {
  const derived = derivedFrom(currentSite());
  switch (target.kind) {
    case 'site':
      return undefined;
    case 'feature':
      return target.vertex === undefined
        ? derived.features.get(target.id)?.points[0]
        : derived.points.get(refKey({ of: target.id, at: target.vertex }))?.at;
    case 'path':
      return derived.paths.get(target.id)?.points[0];
    case 'run': {
      const entry = currentSite().runs.find((r) => r.id === target.id)?.entry;
      return derived.features.get(entry ?? '')?.points[0];
    }
    case 'set-out':
      return setOutOf(currentSite(), derived, target.path)?.points.find((p) => p.number === target.number)
        ?.at;
    case 'reading':
      return derived.marks.find((m) => m.reading.id === target.id)?.place?.at;
  }
}
