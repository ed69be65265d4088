import type { Net } from '../net';
import type { Tagged } from '../tagged';
import { bendEvidence } from './bendEvidence';
import { lengthEvidence } from './lengthEvidence';
import { locateEvidence } from './locateEvidence';
import { pairEvidence } from './pairEvidence';
import { seenEvidence } from './seenEvidence';

/** What was found out besides the drawing and the counters: it can contradict them. */
export function evidence(net: Net): readonly Tagged[] {
  return [
    ...locateEvidence(net),
    ...pairEvidence(net),
    ...seenEvidence(net),
    ...lengthEvidence(net),
    ...bendEvidence(net),
  ];
}
