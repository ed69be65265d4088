import type { Way } from './ways';

/** Metres of pipe that are bored, burst or lined. */
export function boredLength(bored: Way['bored']): number {
  return bored.reduce((sum, { from, to }) => sum + to - from, 0);
}
