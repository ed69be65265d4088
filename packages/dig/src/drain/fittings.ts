import { type DerivedPath, DRAWN_TURN_RAD, pipeSizeAt, ruleValue, type Site } from '@footmark/site';
import type { Turn } from './turns';

/** Two nominal sizes lie half an inch apart or more: an inside diameter within half of that (m) is of the size. */
const HALF_SIZE_M = 0.00635;

/**
 * Turns sharper than a fitting other than a sweep may make, in a pipe in which a quarter bend is not allowed, that are not drawn as wide
 * as a long sweep is.
 */
export function sharpTurns(site: Site, { path }: DerivedPath, turns: readonly Turn[]): readonly Turn[] {
  const [most, small, sweep] = [
    ruleValue(site, 'fittingTurn'),
    ruleValue(site, 'fittingShortTurn'),
    ruleValue(site, 'longSweepRadius'),
  ];
  return turns.filter(
    ({ turn, station, radius }) =>
      turn > most + DRAWN_TURN_RAD &&
      radius < sweep &&
      pipeSizeAt(path.stretches, station).diameter > small + HALF_SIZE_M,
  );
}
