import { manningFlow } from '@footmark/geometry';
import { type DerivedPath, type PathProfile, ruleValue, type Site, stretchesBetween } from '@footmark/site';

/** How a drain runs between the first and the last place whose level is known, by its mean fall and its narrowest size there. */
export type FlowCheck = {
  readonly from: number;
  readonly to: number;
  readonly slope: number;
  /** Inside (m). */
  readonly diameter: number;
  /** Of a pipe that is full, and of one that is half full (m/s). */
  readonly velocity: number;
  /** Of a full pipe (m³/s). */
  readonly discharge: number;
  /** What carries solids along (m/s), and whether it runs so fast. */
  readonly asked: number;
  readonly scours: boolean;
};

/** Null where fewer than two levels are known, or where the pipe does not fall. */
export function flowCheck(site: Site, { path }: DerivedPath, { whole }: PathProfile): FlowCheck | null {
  if (whole === null || whole.slope <= 0) return null;
  const { from, to, slope } = whole;
  const diameter = Math.min(...stretchesBetween(path.stretches, from, to).map((s) => s.diameter));
  if (!(diameter > 0 && Number.isFinite(diameter))) return null;
  const roughness = ruleValue(site, 'roughness');
  if (roughness <= 0) return null;
  const { velocity, discharge } = manningFlow({ diameter, slope, roughness });
  const asked = ruleValue(site, 'scourVelocity');
  return { from, to, slope, diameter, velocity, discharge, asked, scours: velocity >= asked };
}
