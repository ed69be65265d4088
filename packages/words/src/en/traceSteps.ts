import type { Derived, Mark, MarkPlace, ReadingTrace, RouteLeg, Run, RunRoute, Site } from '@footmark/site';
import type { ZeroKind } from '../codes';
import { counterText, lengthText } from '../measureText';
import { atStart, inSentence } from '../named';
import type { TraceStep } from '../traceStep';
import { directionNames, zeroNames } from './drainNames';
import { featureInText, pathInText } from './thingName';

/** Scales are known to a few parts in ten thousand. */
const SCALE_DECIMALS = 4;

/** Below this (m) grade takes nothing off that a tape would show. */
const GRADE_SHOWS_M = 0.001;

/** How a mark came about, from the counter to the place on the sketch; ends where the computation did. */
export function traceSteps(mark: Mark, site: Site, derived: Derived): readonly TraceStep[] {
  const route = derived.routes.get(mark.run.id);
  return [
    ...cableSteps(mark, site),
    ...(route === undefined ? [] : [entryStep(mark, site, derived, route)]),
    ...(route === undefined || mark.place === null ? [] : placeSteps(mark, mark.place, site, route)),
  ];
}

function cableSteps({ run, trace }: Mark, site: Site): readonly TraceStep[] {
  const counter = (metres: number) => counterText(metres, site.units);
  const counted: TraceStep[] =
    trace.counted === trace.counter
      ? []
      : [
          {
            step: 'new-zeros',
            label: 'Counted in all',
            value: counter(trace.counted),
            note: trace.fitted
              ? 'As if the counter had not been set anew, and as the fit made it.'
              : 'As if the counter had not been set anew.',
          },
        ];
  return [
    { step: 'counter', label: 'Counter', value: counter(trace.counter) },
    ...counted,
    {
      step: 'zero',
      label: 'Zero',
      value: counter(trace.zero),
      note: `${zeroNames[run.zero.at]}${trace.fitted ? '; as the fit made it' : ''}.`,
    },
    {
      step: 'scale',
      label: 'Scale',
      value: `× ${Number(trace.scale.toFixed(SCALE_DECIMALS))}`,
      note: scaleNote(run, trace),
    },
    {
      step: 'cable',
      label: 'Cable out',
      value: lengthText(trace.cable, site.units),
      note: 'What was counted since the zero, times the scale.',
    },
    entryLegStep(run.zero.at, trace, site),
    ...alongSteps(trace, site),
  ];
}

function scaleNote(run: Run, trace: ReadingTrace): string {
  if (trace.fitted) return 'True length for each counted length, as the fit made it.';
  if (run.scale.by === 'calibration')
    return 'True length for each counted length, from a length that was counted.';
  return trace.scale === 1 ? 'The counter is taken as true.' : 'True length for each counted length.';
}

/** Where the lens was in the pipe: from the cable, where the counter was zeroed, and how long the head is. */
function alongSteps({ start, ahead, along }: ReadingTrace, site: Site): readonly TraceStep[] {
  const length = (metres: number) => lengthText(metres, site.units);
  const parts = [
    ...(start === 0 ? [] : ['and where the counter was zeroed']),
    ...(ahead === 0 ? [] : ['and the head']),
  ];
  return [
    ...(start === 0
      ? []
      : [
          {
            step: 'start' as const,
            label: 'Zeroed at',
            value: length(start),
            note: 'Along the pipe from the entry.',
          },
        ]),
    ...(ahead === 0
      ? []
      : [
          {
            step: 'ahead' as const,
            label: 'Lens ahead by',
            value: length(ahead),
            note: 'The tail of the head stood at the zero.',
          },
        ]),
    {
      step: 'along',
      label: 'Along the pipe',
      value: length(along),
      note: ['Cable out less the entry leg', ...parts].join(', ').concat('.'),
    },
  ];
}

function entryLegStep(zeroAt: ZeroKind, trace: ReadingTrace, site: Site): TraceStep {
  return {
    step: 'entry-leg',
    label: 'Entry leg',
    value: lengthText(trace.entryLeg, site.units),
    note: entryLegNote(zeroAt, trace, site),
  };
}

/** What the fit made of the cable in the riser is more or less than riser and sweep come to, and not what the sweep saves. */
function entryLegNote(zeroAt: ZeroKind, { riser, entryLeg, fitted }: ReadingTrace, site: Site): string {
  const length = (metres: number) => lengthText(metres, site.units);
  if (riser === null) return `Nothing to take off: ${inSentence(zeroNames[zeroAt])}.`;
  return fitted
    ? `Riser of ${length(riser)} with its sweep; as the fit made it.`
    : `Riser of ${length(riser)} less the ${length(riser - entryLeg)} that its sweep saves.`;
}

function entryStep({ run }: Mark, site: Site, derived: Derived, route: RunRoute): TraceStep {
  const entry = derived.features.get(run.entry ?? '')?.feature;
  const where = entry === undefined ? '' : `${featureInText(entry)}, `;
  return {
    step: 'entry',
    label: 'Entry at',
    value: lengthText(route.entryStation, site.units),
    note: `${atStart(`${where}${inSentence(directionNames[run.direction])}`)}.`,
  };
}

function placeSteps({ trace }: Mark, place: MarkPlace, site: Site, route: RunRoute): readonly TraceStep[] {
  const length = (metres: number) => lengthText(metres, site.units);
  const name = (id: string) => {
    const path = site.paths.find((p) => p.id === id);
    return path === undefined ? id : pathInText(path);
  };
  const legs = legsTo(route, trace.along);
  const way: TraceStep[] =
    legs.length < 2
      ? []
      : [
          {
            step: 'way',
            label: 'Way',
            value: legs.map((leg) => name(leg.path)).join(', then '),
            note: 'The pipes that the camera went through, in order.',
          },
        ];
  const lost = trace.along - planAlong(legs, place.station);
  return [
    ...way,
    {
      step: 'station',
      label: 'Station',
      value: length(place.station),
      note: `On ${name(place.path)}, in plan from its upstream end${
        lost < GRADE_SHOWS_M ? '' : `; grade and drops take ${length(lost)} off the cable`
      }.`,
    },
    {
      step: 'position',
      label: 'Position',
      value: `${length(place.at.x)} east, ${length(place.at.y)} north`,
      note: 'In the plan, from its origin.',
    },
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
