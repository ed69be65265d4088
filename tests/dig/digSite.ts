import { type Excavation, type ExcavationFinding, excavationsOf, type Holes } from '@footmark/dig';
import {
  type Derived,
  type Dig,
  type Digging,
  derive,
  FOOT_M,
  type Site,
  type SiteRules,
} from '@footmark/site';
import { typed, yard } from '../../packages/site/src/testing/yard';

// Yards with digs, in feet where the published values are.

export const feet = (ft: number): number => ft * FOOT_M;
export const inFeet = (m: number): number => m / FOOT_M;
/** A place in feet. */
export const spot = (x: number, y: number) => typed(feet(x), feet(y));

export type DigSite = {
  readonly things?: Partial<Pick<Site, 'features' | 'paths' | 'runs'>>;
  readonly digging?: Partial<Digging>;
  readonly rules?: Partial<SiteRules>;
};

export function digSite({ things = {}, digging = {}, rules = {} }: DigSite): Site {
  const site = yard(things);
  return {
    ...site,
    rules: { ...site.rules, ...rules },
    digging: { ...site.digging, soil: 'b', disturbed: false, protection: 'slope', ...digging },
  };
}

/** A trench along path `p` between stations in feet; its depth and bottom in feet too. */
export function trench(
  from: number,
  to: number,
  facts: Partial<Omit<Extract<Dig, { is: 'trench' }>, 'is'>> = {},
): Dig {
  return {
    is: 'trench',
    id: 'trench',
    name: '',
    note: '',
    path: 'p',
    from: feet(from),
    to: feet(to),
    ...facts,
  };
}

export function dug(
  parts: DigSite,
  holes: Holes = new Map(),
): {
  readonly site: Site;
  readonly derived: Derived;
  readonly all: readonly Excavation[];
  readonly one: Excavation;
} {
  const site = digSite(parts);
  const derived = derive(site);
  const all = excavationsOf(site, derived, holes);
  const [one] = all;
  if (one === undefined) throw new Error('no dig');
  return { site, derived, all, one };
}

type Code = ExcavationFinding['code'];

export function found<C extends Code>(
  { findings }: Pick<Excavation, 'findings'>,
  code: C,
): Extract<ExcavationFinding, { code: C }> | undefined {
  return findings.find((f): f is Extract<ExcavationFinding, { code: C }> => f.code === code);
}

export const codesOf = ({ findings }: Pick<Excavation, 'findings'>): readonly string[] =>
  findings.map((f) => f.code);
