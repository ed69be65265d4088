import { FOOT_M, settings, type Units } from '@footmark/site';

/** A position no better than this (m) is wider than the yard itself. Common practice, no source. */
const POOR_ACCURACY_M = 30;

/** What a stated accuracy (m) is good for as control. */
export function accuracyGrade(metres: number): 'good' | 'fair' | 'poor' {
  return metres <= settings.controlAccuracy.value ? 'good' : metres <= POOR_ACCURACY_M ? 'fair' : 'poor';
}

/** An accuracy (m) rounded up to what it can mean: whole feet, or tenths of a metre. */
export function roundedAccuracy(metres: number, unit: 'ft' | 'm'): number {
  const step = unit === 'ft' ? FOOT_M : 0.1;
  const steps = Math.ceil(metres / step - 1e-6); // a whole number of steps stays what it is
  return unit === 'ft' ? steps * FOOT_M : steps / 10;
}

/** An accuracy (m) for reading: `197 ft`, `4.2 m`. */
export function accuracyText(metres: number, { length }: Pick<Units, 'length'>): string {
  const unit = length === 'm' ? 'm' : 'ft';
  const rounded = roundedAccuracy(metres, unit);
  return unit === 'ft' ? `${Math.round(rounded / FOOT_M)} ft` : `${rounded} m`;
}
