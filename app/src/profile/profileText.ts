import { stationText } from '@footmark/drawing';
import {
  formatLength,
  type PathProfile,
  type ProfileAt,
  type ProfileSlope,
  type Units,
  WITHIN_95,
} from '@footmark/site';
import { lengthText, slopeText } from '@footmark/words';
import { words } from '../words';

/** Levels are decimal wherever tapes are in feet and inches, and to hundredths: a rod is read no finer. */
function levelText(metres: number, units: Units): string {
  return formatLength(metres, units.length === 'm' ? 'm' : 'ft', { decimals: 2 });
}

/** A level; where heights count from the ground, how far below it. */
function heightText(height: number, profile: PathProfile, units: Units): string {
  return profile.heights === 'levels' ? levelText(height, units) : lengthText(-height, units);
}

/** A measure with what it may be off by; the unit once where both are in the same: `91.83 ± 0.2 ft`. */
function withRange(text: string, sigma: number, units: Units): string {
  const range = levelText(Math.ceil(WITHIN_95 * sigma * 100) / 100, units);
  const [, amount, unit = ''] = /^(.*\d)( \D+)$/.exec(text) ?? [];
  return amount !== undefined && range.endsWith(unit) ? `${amount} ± ${range}` : `${text} ± ${range}`;
}

export function groundText({ ground }: ProfileAt, profile: PathProfile, units: Units): string | null {
  if (ground === null || profile.ground.even) return null;
  return withRange(heightText(ground.level, profile, units), ground.sigma, units);
}

export function invertText({ pipe }: ProfileAt, profile: PathProfile, units: Units): string | null {
  return pipe === null ? null : withRange(heightText(pipe.invert, profile, units), pipe.sigma, units);
}

export function coverText({ cover }: ProfileAt, units: Units): string | null {
  return cover === null ? null : withRange(lengthText(cover.depth, units), cover.sigma, units);
}

/** `1.9 % ± 0.5 %: falls enough`. */
export function slopeSaid({ slope, sigma, least, verdict }: ProfileSlope): string {
  const asked = verdict === 'enough' ? '' : `, ${slopeText(least.value)} asked for`;
  return `${slopeText(slope)} ± ${slopeText(WITHIN_95 * sigma)}: ${words.slopeVerdictName(verdict).toLowerCase()}${asked}`;
}

/** The slope of the stretch that a station lies on. */
function slopeOn(profile: PathProfile, station: number): ProfileSlope | null {
  return profile.slopes.find((s) => station >= s.from && station < s.to) ?? null;
}

/** `forWide`: what a narrow screen can do without. */
export type ReadoutPart = { readonly label: string; readonly value: string; readonly forWide: boolean };

/** All that a profile says of a place, short. */
export function readoutOf(at: ProfileAt, profile: PathProfile, units: Units): readonly ReadoutPart[] {
  const slope = slopeOn(profile, at.station);
  const parts: readonly (readonly [string, string | null])[] = [
    ['Station', stationText(at.station, units)],
    ['Ground', groundText(at, profile, units)],
    [profile.heights === 'levels' ? 'Invert' : 'Invert down', invertText(at, profile, units)],
    ['Cover', coverText(at, units)],
    ['Slope', slope === null ? null : slopeText(slope.slope)],
  ];
  return parts.flatMap(([label, value]) =>
    value === null ? [] : [{ label, value, forWide: label === 'Ground' }],
  );
}
