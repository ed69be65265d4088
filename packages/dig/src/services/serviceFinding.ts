import type { Path } from '@footmark/site';
import type { DigFinding } from '../digFinding';
import type { MissingHeight } from './serviceCrossings';

type Clash = { clash: boolean };

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
  /** `handDig`: along a trench; null for a pit. `below`: from the bottom of the dig down to the service; null where not known. */
  'dig-in-tolerance-zone': {
    dig: string;
    feature: string;
    distance: number;
    zone: number;
    handDig: number | null;
    below: number | null;
  };
  /** The site's tolerance zone is narrower than the least that is known, which is used. */
  'tolerance-under-floor': { value: number; floor: number };
  /** No diameter is given: its zone and its gaps count from its middle. */
  'service-without-diameter': { feature: string };
  'one-call-missing': Clash;
  'one-call-not-called': Clash & { days: number | null };
  'one-call-waiting': Clash & { days: number | null };
  'one-call-expired': Clash & { days: number };
  /** The ticket holds, but its days contradict each other. */
  'one-call-dates-clash': Clash;
};

export type ServiceFinding = {
  [Code in keyof ServiceFindingValues]: DigFinding<Code, ServiceFindingValues[Code]>;
}[keyof ServiceFindingValues];
