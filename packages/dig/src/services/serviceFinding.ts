import type { Path } from '@footmark/site';
import type { DigFinding } from '../digFinding';
import type { MissingHeight } from './serviceCrossings';

/** The ticket's own days, null where not told. */
type Ticket = { clash: boolean; days: number | null; from: string | null; until: string | null };

/** Values by code: things by their ids, lengths in metres, angles in radians. */
export type ServiceFindingValues = {
  'service-crossed': {
    path: string;
    state: Path['state'];
    feature: string;
    station: number;
    angle: number;
    gap: number | null;
    over: 'service' | 'pipe' | null;
    missing: readonly MissingHeight[];
    /** The least gap that is usual. */
    asked: number;
    carriedOn: boolean;
  };
  /** `handDig`: along a trench, of its `length` at the ground; null for a pit, or where only the outside of a bend is in the zone. `atLeast`: the depth of the dig is not known all along. `below`: from the bottom of the dig down to the service; null where not known. */
  'dig-in-tolerance-zone': {
    dig: string;
    feature: string;
    distance: number;
    zone: number;
    handDig: number | null;
    length: number | null;
    below: number | null;
    atLeast: boolean;
  };
  /** The site's tolerance zone is narrower than the least that is known, which is used. */
  'tolerance-under-floor': { value: number; floor: number };
  /** No diameter is given: its zone and its gaps count from its middle. */
  'service-without-diameter': { feature: string };
  'one-call-missing': Ticket;
  'one-call-not-called': Ticket;
  'one-call-waiting': Ticket;
  'one-call-expired': Ticket;
  /** The ticket holds, but its days contradict each other. */
  'one-call-dates-clash': Ticket;
  /** The ticket holds, and nobody said until when. */
  'one-call-without-end': Ticket;
};

export type ServiceFinding = {
  [Code in keyof ServiceFindingValues]: DigFinding<Code, ServiceFindingValues[Code]>;
}[keyof ServiceFindingValues];
