/** A position no better than this (m) turns north visibly over a yard. Common practice, no source. */
export const FAIR_ACCURACY_M = 10;
/** A position no better than this (m) is wider than the yard itself. Common practice, no source. */
export const POOR_ACCURACY_M = 30;

/** What a stated accuracy (m) is good for as control. */
export function accuracyGrade(metres: number): 'good' | 'fair' | 'poor' {
  return metres <= FAIR_ACCURACY_M ? 'good' : metres <= POOR_ACCURACY_M ? 'fair' : 'poor';
}
