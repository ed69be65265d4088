import type { Observation } from '@footmark/adjust';
import type { ObservationTag } from './observationTag';

/** An observation of the fit with what it is about. */
export type Tagged = { readonly tag: ObservationTag; readonly observation: Observation };

/** Standard deviations (m) below this are not meant: they would make the fit stiff. */
export const LEAST_SIGMA_M = 0.005;
