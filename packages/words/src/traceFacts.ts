import type {
  Derived,
  Feature,
  Mark,
  MarkPlace,
  ReadingTrace,
  RouteLeg,
  Run,
  RunRoute,
} from '@footmark/site';
import type { RunDirection, ZeroKind } from './codes';

/** Below this (m) grade takes nothing off that a tape would show. */
const GRADE_SHOWS_M = 0.001;

/** What a scale rests on. `said`: a person gave it; `true`: it is 1 and nobody checked. */
export type ScaleFrom = 'fit' | 'calibration' | 'true' | 'said';

/** A step on the way from a counter reading to a place, with what it comes to (m). */
export type TraceFact =
  | { readonly step: 'counter' | 'cable' | 'start' | 'ahead'; readonly metres: number }
  | { readonly step: 'new-zeros'; readonly metres: number; readonly fitted: boolean }
  | { readonly step: 'zero'; readonly metres: number; readonly at: ZeroKind; readonly fitted: boolean }
  | { readonly step: 'scale'; readonly scale: number; readonly from: ScaleFrom }
  /** `saved`: what the sweep of the riser saves; null where the fit made the entry leg what it is. */
  | {
      readonly step: 'entry-leg';
      readonly metres: number;
      readonly at: ZeroKind;
      readonly riser: number | null;
      readonly saved: number | null;
    }
  /** Less the entry leg; `start` and `ahead`: whether those count too. */
  | { readonly step: 'along'; readonly metres: number; readonly start: boolean; readonly ahead: boolean }
  | {
      readonly step: 'entry';
      readonly metres: number;
      readonly feature: Feature | null;
      readonly direction: RunDirection;
    }
  /** Ids of the pipes in the order in which the camera went through them. */
  | { readonly step: 'way'; readonly paths: readonly string[] }
  /** `lost`: what grade and drops take off the cable; 0 where it does not show. */
  | { readonly step: 'station'; readonly metres: number; readonly path: string; readonly lost: number }
  | { readonly step: 'position'; readonly east: number; readonly north: number };

/** How a mark came about, from the counter to the place on the sketch; ends where the computation did. */
export function traceFacts({ run, trace, place }: Mark, derived: Derived): readonly TraceFact[] {
  const route = derived.routes.get(run.id);
  return [
    ...cableFacts(run, trace),
    ...(route === undefined ? [] : [entryFact(run, derived, route)]),
    ...(route === undefined || place === null ? [] : placeFacts(trace, place, route)),
  ];
}

function cableFacts(run: Run, trace: ReadingTrace): readonly TraceFact[] {
  const { counter, counted, zero, scale, cable, start, ahead, along, entryLeg, riser, fitted } = trace;
  const at = run.zero.at;
  const facts: readonly (TraceFact | null)[] = [
    { step: 'counter', metres: counter },
    counted === counter ? null : { step: 'new-zeros', metres: counted, fitted },
    { step: 'zero', metres: zero, at, fitted },
    { step: 'scale', scale, from: scaleFrom(run, trace) },
    { step: 'cable', metres: cable },
    // what the fit made of the cable in the riser is more or less than riser and sweep come to, and not what the sweep saves
    {
      step: 'entry-leg',
      metres: entryLeg,
      at,
      riser,
      saved: riser === null || fitted ? null : riser - entryLeg,
    },
    start === 0 ? null : { step: 'start', metres: start },
    ahead === 0 ? null : { step: 'ahead', metres: ahead },
    { step: 'along', metres: along, start: start !== 0, ahead: ahead !== 0 },
  ];
  return facts.filter((fact) => fact !== null);
}

function scaleFrom(run: Run, { scale, fitted }: ReadingTrace): ScaleFrom {
  if (fitted) return 'fit';
  if (run.scale.by === 'calibration') return 'calibration';
  return scale === 1 ? 'true' : 'said';
}

function entryFact(run: Run, derived: Derived, route: RunRoute): TraceFact {
  const feature = derived.features.get(run.entry ?? '')?.feature ?? null;
  return { step: 'entry', metres: route.entryStation, feature, direction: run.direction };
}

function placeFacts(trace: ReadingTrace, place: MarkPlace, route: RunRoute): readonly TraceFact[] {
  const legs = legsTo(route, trace.along);
  const way: TraceFact[] = legs.length < 2 ? [] : [{ step: 'way', paths: legs.map((leg) => leg.path) }];
  const lost = trace.along - planAlong(legs, place.station);
  return [
    ...way,
    { step: 'station', metres: place.station, path: place.path, lost: lost < GRADE_SHOWS_M ? 0 : lost },
    { step: 'position', east: place.at.x, north: place.at.y },
  ];
}

function legsTo(route: RunRoute, along: number): readonly RouteLeg[] {
  const last = route.legs.findIndex((leg) => along <= leg.toAlong);
  return last === -1 ? route.legs : route.legs.slice(0, last + 1);
}

/** Plan metres over the legs, the last of them only up to `station`. */
function planAlong(legs: readonly RouteLeg[], station: number): number {
  return legs.reduce(
    (sum, leg, i) => sum + Math.abs((i === legs.length - 1 ? station : leg.toStation) - leg.fromStation),
    0,
  );
}
