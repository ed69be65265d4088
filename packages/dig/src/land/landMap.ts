import { type Point, pointInRing } from '@footmark/geometry';
import type { Derived, DerivedFeature } from '@footmark/site';
import type { LandFinding } from './landFinding';
import { type Lot, lotsOf } from './lots';
import { carriedOn, liesBeyond } from './rightOfWay';
import type { WhoseAt } from './whose';

/** What tells of the land on a site. */
export type LandMap = {
  readonly whoseAt: (p: Point) => WhoseAt;
  readonly own: Lot | null;
  /** Every line at which it can change whose land it is, closed ones with their first point again. */
  readonly lines: readonly (readonly Point[])[];
};

export function landMap(derived: Derived, findings: LandFinding[]): LandMap {
  const of = (...kinds: readonly string[]) =>
    [...derived.features.values()].filter(({ feature }) => kinds.includes(feature.kind));
  const { own, others, house } = lotsOf(derived, findings);
  const [easements, pavements] = [of('easement'), of('street', 'sidewalk')];
  const rights =
    house === null ? [] : of('right-of-way').map((r) => ({ id: r.feature.id, line: carriedOn(r.outline) }));
  if (house === null) for (const right of of('right-of-way')) findings.push(withoutHouse(right));
  const closed = (ring: readonly Point[]) => [...ring, ...ring.slice(0, 1)];
  const lots = own === null ? others : [own, ...others];
  return {
    own,
    lines: [
      ...lots.map(({ ring }) => closed(ring)),
      ...[...easements, ...pavements].map(({ outline }) => closed(outline)),
      ...rights.map(({ line }) => line),
    ],
    whoseAt(p) {
      const holds = ({ outline }: DerivedFeature) => pointInRing(p, outline) === 'inside';
      const idsOf = (found: readonly DerivedFeature[]) => found.map(({ feature }) => feature.id);
      const paved = pavements.filter(holds);
      if (paved.length > 0) return { whose: 'public', features: idsOf(paved) };
      const beyond = house === null ? [] : rights.filter(({ line }) => liesBeyond(line, house, p));
      if (beyond.length > 0) return { whose: 'public', features: beyond.map(({ id }) => id) };
      const shared = easements.filter(holds);
      if (shared.length > 0) return { whose: 'shared', features: idsOf(shared) };
      if (own !== null && pointInRing(p, own.ring) !== 'outside')
        return { whose: 'private', features: own.features };
      const neighbour = others.find(({ ring }) => pointInRing(p, ring) === 'inside');
      if (neighbour !== undefined) return { whose: 'neighbour', features: neighbour.features };
      if (own === null) return { whose: 'unknown', features: [] };
      return { whose: rights.length > 0 ? 'neighbour' : 'outside', features: [] };
    },
  };
}

function withoutHouse({ feature, outline }: DerivedFeature): LandFinding {
  return {
    code: 'right-of-way-without-house',
    severity: 'note',
    at: { kind: 'feature', id: feature.id },
    place: outline[0] ?? null,
    rule: null,
    values: { feature: feature.id },
  };
}
