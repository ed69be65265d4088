import { type Adjustment, adjust, type Solved } from '@footmark/adjust';
import type { Derived } from '../derive/derive';
import type { Site } from '../document/site';
import { evidence } from './evidence/evidence';
import { guesses } from './guesses/guesses';
import { locatedAsDrawn, lookedAsDrawn, placedAgain } from './located';
import { type Net, netOf } from './net';
import { isEvidence, observationName } from './observationTag';
import type { Tagged } from './tagged';

/** A net that was solved by some of its observations. */
export type SolvedRuns = {
  readonly net: Net;
  /** The observations that took part, and all of them. */
  readonly list: readonly Tagged[];
  readonly everything: readonly Tagged[];
  readonly result: Adjustment;
};

/** A ten-thousandth of a deviation is finer than any paint; short legs that were drawn badly come there slowly. */
const ENOUGH = { stepTolerance: 1e-4, maxIterations: 200 };

/** How often a locate may go over to the other side of a corner before that is left where it is. */
const MOST_PASSES = 4;

/**
 * The lines as they were drawn, weighed without any evidence and with all that was said of them: what people set aside counts for the fit,
 * but the drawing is shown as it is. Null when it was stopped.
 */
export function solveAsDrawn(site: Site, drawn: Derived, shouldStop?: () => boolean): SolvedRuns | null {
  const net = netOf(site, drawn, new Set(), { located: new Map(), looked: new Map() });
  const everything = guesses(net);
  return solved(net, everything, everything, shouldStop);
}

/**
 * Drawing, counters and evidence weighed together; null when it was stopped. Which leg a locate belongs to follows from the solution: it is
 * solved again while one changes over.
 */
export function solveWithEvidence(site: Site, drawn: Derived, shouldStop?: () => boolean): SolvedRuns | null {
  const aside = new Set(site.setAside);
  const located = locatedAsDrawn(site, drawn, aside);
  const paired = pairedReadings(site, drawn, aside);
  const evidenced = new Set([...located.keys(), ...paired, ...seeingReadings(site, drawn, aside)]);
  let places = { located, looked: lookedAsDrawn(drawn, paired) };
  for (let pass = 1; ; pass++) {
    const net = netOf(site, drawn, evidenced, places);
    const everything = [...evidence(net), ...guesses(net)];
    const list = everything.filter(({ tag }) => !aside.has(observationName(tag)));
    const one = solved(net, list, everything, shouldStop);
    if (one === null || !isSolved(one.result) || pass === MOST_PASSES) return one;
    const again = placedAgain(net, places, one.result.estimates);
    if (again === null) return one;
    places = again;
  }
}

export function isSolved(result: Adjustment): result is Solved {
  return result.status !== 'singular' && result.status !== 'stopped';
}

export function hasEvidence({ list }: SolvedRuns): boolean {
  return list.some(({ tag }) => isEvidence(tag));
}

function solved(
  net: Net,
  list: readonly Tagged[],
  everything: readonly Tagged[],
  shouldStop: (() => boolean) | undefined,
): SolvedRuns | null {
  if (shouldStop?.() === true) return null;
  const result = adjust(
    { estimates: [...net.start], observations: list.map((t) => t.observation) },
    { ...ENOUGH, ...(shouldStop === undefined ? {} : { shouldStop }) },
  );
  return result.status === 'stopped' ? null : { net, list, everything, result };
}

/** The readings that pairs compare. */
function pairedReadings(site: Site, drawn: Derived, aside: ReadonlySet<string>): ReadonlySet<string> {
  const placed = placedReadings(drawn);
  return new Set(
    site.pairs.flatMap(({ id, a, b }) =>
      placed.has(a.reading) && placed.has(b.reading) && !aside.has(observationName({ is: 'pair', pair: id }))
        ? [a.reading, b.reading]
        : [],
    ),
  );
}

/** The readings that saw a point of the plan. */
function seeingReadings(site: Site, drawn: Derived, aside: ReadonlySet<string>): readonly string[] {
  const placed = placedReadings(drawn);
  return site.runs.flatMap((run) =>
    run.readings.flatMap(({ id, seenAt }) =>
      seenAt !== undefined &&
      placed.has(id) &&
      !aside.has(observationName({ is: 'seen', run: run.id, reading: id }))
        ? [id]
        : [],
    ),
  );
}

function placedReadings(drawn: Derived): ReadonlySet<string> {
  return new Set(drawn.marks.flatMap((m) => (m.place === null ? [] : [m.reading.id])));
}
