import type { Net } from '../net';
import type { Tagged } from '../tagged';
import { pointGuesses } from './pointGuesses';
import { runGuesses } from './runGuesses';
import { strayGuesses } from './strayGuesses';

/** What the fit starts from: how the pipes were drawn, what was said of the runs, and the counters. */
export function guesses(net: Net): readonly Tagged[] {
  return [...pointGuesses(net), ...strayGuesses(net), ...runGuesses(net)];
}
