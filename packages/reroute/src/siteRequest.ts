import { type TrenchReach, trenchReach } from '@footmark/dig';
import type { Point } from '@footmark/geometry';
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
import { type Minded, mindedOn, type Treatment } from './treatment';

/** A thing that a route minds, and how it does. */
export type Treated = Minded & { readonly treatment: Treatment };

/** A pipe by its nominal diameter (m), whether it must keep the fall that is asked for, and what is asked otherwise than its site has it. */
export type Pipe = {
  readonly diameter: number;
  readonly material: PipeMaterial;
  readonly keepsGrade: boolean;
  readonly otherwise: Omit<Otherwise, 'startInvert' | 'endInvert' | 'anyHeading'>;
};

type Size = Pick<Pipe, 'diameter' | 'material'>;

/** A place where a route begins or may end, and how deep (m) its invert lies there; null where that is not known. */
export type EndPlace = { readonly at: Point; readonly depth: number | null };

/** Between which places a route runs. */
export type Between = { readonly start: EndPlace; readonly ends: readonly EndPlace[] };

/** What a route on a site minds, each thing as it usually does where nothing else is said of it. */
export function treatedOn(
  site: Site,
  derived: Derived,
  pipe: Pipe,
  { start, ends }: Between,
  treat: Readonly<Record<string, Treatment>>,
): readonly Treated[] {
  const setting = {
    start: start.at,
    ends: ends.map(({ at }) => at),
    trench: trenchBeside(site, pipe, { start, ends }),
  };
  return mindedOn(site, derived, setting).map((m) => ({ ...m, treatment: treat[m.id] ?? m.usual }));
}

/** How deep (m) a route lies at the deeper of its known ends; null where none is known. */
export function deepest({ start, ends }: Between): number | null {
  const depths = [start, ...ends].flatMap(({ depth }) => depth ?? []);
  return depths.length === 0 ? null : Math.max(...depths);
}

/** How far (m) beyond the pipe's outside its trench reaches at the ground where it is deepest; null where that is not known. */
export function trenchBeside(site: Site, pipe: Size, between: Between): TrenchReach | null {
  const depth = deepest(between);
  const trench = depth === null ? null : trenchReach(site, depth);
  return trench === null ? null : { ...trench, reach: trench.reach - outside(pipe) / 2 };
}

/** What a request for a pipe takes from a site, wherever it starts and ends. */
export function siteRequest(
  site: Site,
  pipe: Pipe,
  between: Between,
  treated: readonly Treated[],
): Omit<RouteRequest, 'start' | 'ends'> {
  const diameter = outside(pipe);
  const { leastFall: least, mostBends, leastStraight } = pipe.otherwise;
  // where each metre is dearer, what is weighed in metres counts for fewer
  const dearer = 1 + ruleValue(site, 'routeDeep') * deepShare(site, between);
  return {
    diameter,
    bends: bendTable(site, pipe.diameter, pipe.otherwise).map((b) => ({ ...b, cost: b.cost / dearer })),
    leastStraight: leastStraight ?? ruleValue(site, 'routeStraight'),
    mostBends: mostBends ?? Math.round(ruleValue(site, 'routeBends')),
    obstacles: treated.flatMap(({ id, shape, treatment }) =>
      treatment.as === 'clear' ? [{ id, shape, clearance: treatment.clearance }] : [],
    ),
    areas: treated.flatMap(({ id, shape, treatment }) =>
      treatment.as === 'cost' && treatment.perMetre > 0
        ? [{ id, shape: fromOutside(shape, diameter / 2), perMetre: treatment.perMetre / dearer }]
        : [],
    ),
    freeEnds: ruleValue(site, 'routeEnds'),
    grade: { least: least ?? leastFall(site, pipe.diameter).value, kept: pipe.keepsGrade },
  };
}

/** The outside diameter (m). */
export function outside({ diameter, material }: Size): number {
  return diameter * (1 + 2 * wallShares[material].value);
}

/** The share of the way on which a trench is so deep that it asks for a protective system, taken as even from the start to the deepest end. */
function deepShare(site: Site, { start, ends }: Between): number {
  const limit = ruleValue(site, 'protectionDepth') - ruleValue(site, 'beddingDepth');
  const known = ends.flatMap(({ depth }) => depth ?? []);
  const from = start.depth ?? known[0];
  if (from === undefined) return 0;
  const to = known.length === 0 ? from : Math.max(...known);
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  if (high <= limit) return 0;
  return low >= limit ? 1 : (high - limit) / (high - low);
}

/** The invert (m, the site's levels) of a pipe at a station; null where its levels are not known. */
export function invertAt({ profiles }: Derived, path: string, station: number): number | null {
  const profile = profiles.get(path);
  return profile === undefined ? null : (profileAt(profile, station).pipe?.invert ?? null);
}

/** How deep (m) the invert of a pipe lies at a station; null where that is not known. */
export function depthAt({ profiles }: Derived, path: string, station: number): number | null {
  const profile = profiles.get(path);
  return profile === undefined ? null : (profileAt(profile, station).depth?.depth ?? null);
}

/** Beside a line it is the pipe's outside that counts. */
function fromOutside(shape: Shape, radius: number): Shape {
  return shape.is === 'line' ? { ...shape, halfWidth: shape.halfWidth + radius } : shape;
}
