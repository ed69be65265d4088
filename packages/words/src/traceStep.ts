/** One step on the way from a counter reading to a place. */
export type TraceStepCode =
  | 'counter'
  | 'new-zeros'
  | 'zero'
  | 'scale'
  | 'cable'
  | 'entry-leg'
  | 'start'
  | 'ahead'
  | 'along'
  | 'entry'
  | 'way'
  | 'station'
  | 'position';

/** A step in words: what it is, what it comes to with its unit, and where that came from. */
export type TraceStep = {
  readonly step: TraceStepCode;
  readonly label: string;
  readonly value: string;
  readonly note?: string;
};
