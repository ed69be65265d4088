import { type Derived, proposedPaths, type Site } from '@footmark/site';
import type { Step } from '../session/workbench';

/** A step at a glance: how much is there, or what is missing. Of the route `RouteState` says so. */
export function stepState(step: Exclude<Step, 'route'>, site: Site, derived: Derived): string {
  switch (step) {
    case 'yard':
      return site.features.length === 0 ? 'empty' : String(site.features.length);
    case 'line':
      return site.paths.length === 0 ? 'empty' : String(site.paths.length);
    case 'runs':
      return site.runs.length === 0 ? 'empty' : String(site.runs.length);
    case 'marks': {
      const placed = derived.marks.filter((m) => m.place !== null).length;
      if (derived.marks.length === 0) return proposedPaths(derived).length === 0 ? 'empty' : 'set out';
      return placed === derived.marks.length ? String(placed) : `${placed} of ${derived.marks.length}`;
    }
    case 'hand-off': {
      const missing = derived.marks.filter((m) => m.place === null).length;
      if (derived.marks.length === 0) return 'later';
      return missing === 0 ? 'ready' : `${missing} missing`;
    }
  }
}
