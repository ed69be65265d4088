import type { RouteRequest, Shape } from '@footmark/route';
import {
  type Derived,
  leastFall,
  type PipeMaterial,
  profileAt,
  ruleValue,
  type Site,
  wallShares,
} from '@footmark/site';
import type { Otherwise } from './ask';
import { bendTable } from './bendTable';
import { type Ends, type Minded, mindedOn, type Treatment } from './treatment';

/** A thing that a route minds, and how it does. */
export type Treated = Minded & { readonly treatment: Treatment };

/** What a route on a site minds, each thing as it usually does where nothing else is said of it. */
export function treatedOn(
  site: Site,
  derived: Derived,
  ends: Ends,
  treat: Readonly<Record<string, Treatment>>,
): readonly Treated[] {
  return mindedOn(site, derived, ends).map((m) => ({ ...m, treatment: treat[m.id] ?? m.usual }));
}

/** A pipe by its nominal diameter (m), whether it must keep the fall that is asked for, and what is asked otherwise than its site has it. */
type Pipe = {
  readonly diameter: number;
  readonly material: PipeMaterial;
  readonly keepsGrade: boolean;
  readonly otherwise?: Pick<Otherwise, 'leastFall' | 'mostBends' | 'leastStraight'>;
};

/** What a request for a pipe takes from a site, wherever it starts and ends. */
export function siteRequest(
  site: Site,
  pipe: Pipe,
  treated: readonly Treated[],
): Omit<RouteRequest, 'start' | 'ends'> {
  const diameter = pipe.diameter * (1 + 2 * wallShares[pipe.material].value);
  const { leastFall: least, mostBends, leastStraight } = pipe.otherwise ?? {};
  return {
    diameter,
    bends: bendTable(site),
    leastStraight: leastStraight ?? ruleValue(site, 'routeStraight'),
    mostBends: mostBends ?? Math.round(ruleValue(site, 'routeBends')),
    obstacles: treated.flatMap(({ id, shape, treatment }) =>
      treatment.as === 'clear' ? [{ id, shape, clearance: treatment.clearance }] : [],
    ),
    areas: treated.flatMap(({ id, shape, treatment }) =>
      treatment.as === 'cost' && treatment.perMetre > 0
        ? [{ id, shape: fromOutside(shape, diameter / 2), perMetre: treatment.perMetre }]
        : [],
    ),
    freeEnds: ruleValue(site, 'routeEnds'),
    grade: { least: least ?? leastFall(site, pipe.diameter).value, kept: pipe.keepsGrade },
  };
}

/** The invert (m, the site's levels) of a pipe at a station; null where its levels are not known. */
export function invertAt({ profiles }: Derived, path: string, station: number): number | null {
  const profile = profiles.get(path);
  return profile === undefined ? null : (profileAt(profile, station).pipe?.invert ?? null);
}

/** Beside a line it is the pipe's outside that counts. */
function fromOutside(shape: Shape, radius: number): Shape {
  return shape.is === 'line' ? { ...shape, halfWidth: shape.halfWidth + radius } : shape;
}
