import { locate, type Point } from '@footmark/geometry';
import type { DerivedPath } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import type { LandCrossing, LandMark, LandStretch } from './land';
import type { LandFinding } from './landFinding';
import type { Whose } from './whose';

const CODES = {
  neighbour: 'path-on-neighbour',
  public: 'path-on-public',
  shared: 'path-in-easement',
  outside: 'path-outside',
} as const satisfies Partial<Record<Whose, LandFinding['code']>>;

/** Of a pipe that is there, and of one that is to be laid. */
const SEVERITIES: Record<keyof typeof CODES, readonly [DigSeverity, DigSeverity]> = {
  neighbour: ['should', 'must'],
  public: ['note', 'should'],
  shared: ['note', 'should'],
  outside: ['note', 'should'],
};

/** Who must be asked about a stretch of pipe. `along`: it runs on the very line of the lot. */
export function sayOfStretch(
  on: DerivedPath,
  stretch: LandStretch,
  along: boolean,
  findings: LandFinding[],
): void {
  const { whose, from, to, features } = stretch;
  const { id, state } = on.path;
  const common = {
    at: { kind: 'path', id },
    place: locate(on.line, (from + to) / 2).point,
    rule: null,
    values: { path: id, state, from, to, features },
  } as const;
  if (along) findings.push({ ...common, code: 'path-along-boundary', severity: 'should' });
  if (whose === 'private' || whose === 'unknown') return;
  const [there, planned] = SEVERITIES[whose];
  findings.push({ ...common, code: CODES[whose], severity: state === 'proposed' ? planned : there });
}

/** A boundary by which nothing is judged may still be one: it is said where the pipe crosses it. */
export function sayOfCrossing(
  { path: { id, state } }: DerivedPath,
  { station, at: place, feature, kind, from, to }: LandCrossing,
  findings: LandFinding[],
): void {
  if (kind !== 'boundary' && kind !== 'boundary-line') return;
  if (from !== 'unknown' || to !== 'unknown') return;
  findings.push({
    code: 'path-crosses-open-boundary',
    severity: state === 'proposed' ? 'should' : 'note',
    at: { kind: 'path', id },
    place,
    rule: null,
    values: { path: id, state, station, feature },
  });
}

/** A mark is where somebody is going to dig. */
export function sayOfMark(
  { run, reading, whose, features }: LandMark,
  place: Point,
  findings: LandFinding[],
): void {
  if (whose === 'private' || whose === 'unknown') return;
  findings.push({
    code: 'mark-not-private',
    severity: whose === 'shared' || whose === 'outside' ? 'note' : 'should',
    at: { kind: 'reading', run, id: reading },
    place,
    rule: null,
    values: { run, reading, whose, features },
  });
}
