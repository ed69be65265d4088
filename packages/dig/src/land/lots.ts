import { type Point, pointInRing, ringArea, ringCrossesItself } from '@footmark/geometry';
import { type Derived, type DerivedFeature, settings } from '@footmark/site';
import { boundaryChains } from './boundaryChains';
import { insidePoint } from './insidePoint';
import type { LandFinding } from './landFinding';

/** A closed boundary, and the features that it is drawn by. */
export type Lot = { readonly features: readonly string[]; readonly ring: readonly Point[] };

/** The site's own lot, those beside it, and a place in its house (or, without one, in the lot); null where not told. */
export type Lots = {
  readonly own: Lot | null;
  readonly others: readonly Lot[];
  readonly house: Point | null;
};

/**
 * The own lot is the closed boundary that holds the largest building; without a building the only one, or the one that a pipe begins in.
 * A boundary that crosses itself or does not close is not used, and a finding says so.
 */
export function lotsOf({ features, paths }: Derived, findings: LandFinding[]): Lots {
  const all = [...features.values()];
  const lots = closedLots(all, findings);
  const house = houseOf(all);
  const [start] = [...paths.values()].flatMap((path) => path.points.slice(0, 1));
  const own = ownLot(lots, house, start);
  if (own === null && lots.length > 0) findings.push(aboutSite('lot-not-told', { lots: lots.length }));
  const others = lots.filter((lot) => lot !== own);
  return { own, others, house: house ?? (own === null ? null : insidePoint(own.ring)) };
}

function closedLots(all: readonly DerivedFeature[], findings: LandFinding[]): readonly Lot[] {
  const areas = all.filter(({ feature }) => feature.kind === 'boundary');
  const lines = all.filter(({ feature }) => feature.kind === 'boundary-line');
  if (areas.length === 0 && lines.length === 0) findings.push(aboutSite('no-boundary', {}));
  const lots: Lot[] = [];
  for (const { feature, outline, closure } of areas) {
    // a poor misclosure is one of the site's own warnings, too; a shared-out one somebody has seen
    const open = closure !== null && !closure.balanced && closure.ratio < 1 / settings.misclosure.value;
    if (open) findings.push(notClosed(feature.id, closure.length, outline[0]));
    else if (ringCrossesItself(outline)) findings.push(crossesItself(feature.id, outline[0]));
    else lots.push({ features: [feature.id], ring: outline });
  }
  const chains = boundaryChains(lines);
  for (const { features, points, closed } of chains) {
    const [first = ''] = features;
    if (!closed) continue;
    if (ringCrossesItself(points)) findings.push(crossesItself(first, points[0]));
    else lots.push({ features, ring: points });
  }
  // lines beside a closed lot are its neighbours' or mark its own sides anew
  if (lots.length > 0) return lots;
  for (const { features, gap, points } of chains)
    if (gap > 0) findings.push(notClosed(features[0] ?? '', gap, points[0]));
  return lots;
}

/** A place in the largest building. */
function houseOf(all: readonly DerivedFeature[]): Point | null {
  const areaOf = ({ outline }: DerivedFeature) => Math.abs(ringArea(outline));
  const [largest] = all
    .filter(({ feature }) => feature.kind === 'building')
    .sort((a, b) => areaOf(b) - areaOf(a));
  return largest === undefined ? null : insidePoint(largest.outline);
}

function ownLot(lots: readonly Lot[], house: Point | null, start: Point | undefined): Lot | null {
  const [only] = lots;
  if (house === null && lots.length === 1 && only !== undefined) return only;
  const within = house ?? start;
  if (within === undefined) return null;
  // of lots that hold each other the innermost
  const [inner] = lots
    .filter(({ ring }) => pointInRing(within, ring) === 'inside')
    .sort((a, b) => Math.abs(ringArea(a.ring)) - Math.abs(ringArea(b.ring)));
  return inner ?? null;
}

const aboutLine = { severity: 'should', rule: null } as const;

function notClosed(feature: string, gap: number, place: Point | undefined): LandFinding {
  const at = { kind: 'feature', id: feature } as const;
  return { ...aboutLine, code: 'boundary-not-closed', at, place: place ?? null, values: { feature, gap } };
}

function crossesItself(feature: string, place: Point | undefined): LandFinding {
  const at = { kind: 'feature', id: feature } as const;
  return { ...aboutLine, code: 'boundary-crosses-itself', at, place: place ?? null, values: { feature } };
}

function aboutSite(code: 'no-boundary', values: Record<never, never>): LandFinding;
function aboutSite(code: 'lot-not-told', values: { lots: number }): LandFinding;
function aboutSite(code: 'no-boundary' | 'lot-not-told', values: { lots?: number }): LandFinding {
  const common = { at: { kind: 'site' }, place: null, rule: null } as const;
  return code === 'no-boundary'
    ? { ...common, code, severity: 'note', values: {} }
    : { ...common, code, severity: 'should', values: { lots: values.lots ?? 0 } };
}
