import type { Point } from '@footmark/geometry';
import type { Dig, FeatureKind, RuleName, Soil, Target } from '@footmark/site';
import type { DigFinding, DigSeverity } from '../digFinding';

type Of = { dig: string };
type Thing = Of & { feature: string; kind: FeatureKind };
/** `atLeast`: the depth of the dig is not known all along, and it takes more than this. */
type Met = Thing & { atLeast: boolean };
/** `atLeast`: the depth is not known all along, and may be more elsewhere. */
type Deep = Of & { depth: number; atLeast: boolean };
/** What a footing is and how far from the bottom's edge; `assumed`: how deep it is follows from the kind of foundation, or from none at all. */
type Footed = Thing & { footing: number; distance: number; assumed: 'foundation' | 'nothing' | null };

/** Values by code: things by their ids, lengths in metres, areas in m², volumes in m³, slopes as horizontal over vertical. */
export type ExcavationFindingValues = {
  // where and how large
  'dig-without-place': Of;
  'trench-without-length': Of & { from: number; to: number };
  'trench-past-end': Of & { beyond: number; length: number };
  'pit-without-size': Of;
  // how deep
  'depth-not-known': Of & { because: 'no-pipe-level' | 'no-ground' | 'indoors'; station: number };
  /** The pipe's level is carried on past the last that is known, by the slope that was said of it. */
  'depth-carried-on': Of & { sigma: number };
  'depth-not-positive': Of & { depth: number; station: number };
  // what keeps the sides
  'soil-not-chosen': Of & { slope: number };
  'disturbed-soil-is-not': Of & { chosen: Soil; as: Soil; slope: number };
  /** `engineer`: deeper than any slope or shield is given for. */
  'protective-system-needed': Deep & { limit: number; planned: 'slope' | 'shield' | 'engineer' };
  /** It stands at the slope of soil A; open for a day it might be as steep as `slope` and `width` across at the top. */
  'short-term-may-be-steeper': Of & { depth: number; slope: number; limit: number; width: number };
  'competent-person-decides': Of & { depth: number; limit: number };
  /** Less deep than the limit, but not surely so. */
  'depth-may-pass-limit': Of & { depth: number; sigma: number; limit: number };
  /** So much of its `depth` stands straight with nothing before it. */
  'rock-must-be-stable': Deep;
  'engineer-designs': Deep & { limit: number };
  /** Straight for `upright` behind the shield, which stands `above` that, and cut back by `slope` from there on: 0 in rock. */
  'shield-stands-above': Of & { above: number; upright: number; slope: number };
  /** How high the shield is is not told: the sides stand straight to the ground. */
  'shield-reaches-ground': Deep;
  'egress-needed': Deep & { limit: number; places: number; travel: number };
  // spoil
  'spoil-kept-back': Of & {
    setback: number;
    width: number;
    height: number;
    volume: number;
    side: 'left' | 'right';
  };
  /** `side` null: nobody chose one, and neither has room. */
  'spoil-without-room': Of & {
    side: 'left' | 'right' | null;
    suggested: 'left' | 'right' | 'away';
    features: readonly string[];
  };
  // what the top outline meets
  'dig-crosses-boundary': Met & { length: number };
  'dig-in-easement': Met & { area: number };
  'dig-reaches-building': Met & { area: number };
  'dig-takes-pavement': Met & { area: number };
  /** `length` of it goes bare; `unknown`: whose depth is not known, so that it may. */
  'dig-crosses-service': Met & { length: number; unknown: 'service' | 'dig' | null };
  'dig-takes-thing': Met;
  'dig-takes-trunk': Met;
  /** The dig goes below the line that spreads down and out from a footing. `reach`: how far off it would have to stay. */
  'dig-under-footing': Footed & Deep & { reach: number };
  /** It does not, if the footing is as deep as that of its foundation is taken to be; one as shallow as the `shallowest` it would. */
  'footing-taken': Footed & { depth: number; reach: number; shallowest: number };
  /** How deep the dig is is not known: it does once it is deeper than `deepest`. */
  'footing-not-judged': Footed & { deepest: number };
};

export type ExcavationFinding = {
  [Code in keyof ExcavationFindingValues]: DigFinding<Code, ExcavationFindingValues[Code]>;
}[keyof ExcavationFindingValues];

type Code = keyof ExcavationFindingValues;

/** Notes a finding about one dig; `place` where it is not the dig's own, `rule` the rule that asks. */
export type Say = <C extends Code>(
  code: C,
  severity: DigSeverity,
  values: Omit<ExcavationFindingValues[C], 'dig'>,
  more?: { readonly rule?: RuleName; readonly place?: Point },
) => void;

/** What a dig is shown by: the mark of a pit, the pipe of a trench. */
export function targetOfDig(dig: Dig): Target {
  return dig.is === 'pit'
    ? { kind: 'reading', run: dig.at.run, id: dig.at.reading }
    : { kind: 'path', id: dig.path };
}

/** Gathers findings about a dig whose middle is at `middle`. */
export function sayOf(dig: Dig, middle: Point | null, findings: ExcavationFinding[]): Say {
  return (code, severity, values, more = {}) => {
    const found = {
      code,
      severity,
      at: targetOfDig(dig),
      place: more.place ?? middle,
      rule: more.rule ?? null,
      values: { ...values, dig: dig.id },
    };
    // a generic code cannot be seen by the compiler as one member of the union, though it always is
    findings.push(found as unknown as ExcavationFinding);
  };
}
