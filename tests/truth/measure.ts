import type { Point } from '@footmark/geometry';
import { derive, fitRuns, type RunsFit, type SearchZone, type Site, takeFit } from '@footmark/site';
import { seededRandom } from '../random/seeded';
import { simulatedSite } from './simulatedSite';

/** How a whole lot of simulated sites came out. */
export type TruthTable = {
  readonly blunders: BlunderTally;
  readonly sites: number;
  /** One mark of each site, as it is shown once the fit was taken: how many zones hold the true point. */
  readonly held: number;
  /** Of all marks of all sites: as drawn, and after the fit was taken. */
  readonly drawn: { readonly marks: number; readonly held: number; readonly meanSize: number };
  readonly taken: { readonly marks: number; readonly held: number; readonly meanSize: number };
};

/**
 * Sites with blunders, by the worst of each. `large` and `named` go by what a blunder does: the standardised residual that it is bound to
 * raise, its size in its own deviations times the root of its redundancy; one of little redundancy cannot be seen by any method.
 * `largeOfOwn` and `namedOfOwn` go by its size in its own deviations alone.
 */
export type BlunderTally = {
  readonly sites: number;
  readonly injected: number;
  readonly large: number;
  readonly named: number;
  readonly largeOfOwn: number;
  readonly namedOfOwn: number;
};

/** A blunder of more than this many deviations is to be named. */
const LARGE = 5;

/** Simulates `sites` yards for zones, and as many rich ones for blunders. */
export function measureTruth(sites: number, seed: number): TruthTable {
  const drawn = { marks: 0, held: 0, size: 0 };
  const taken = { marks: 0, held: 0, size: 0 };
  let held = 0;
  let counted = 0;
  for (let i = 0; i < sites; i++) {
    const { site, truth } = simulatedSite(seed + i, { blunderShare: 0, rich: false });
    const before = weigh(site);
    const after = before.fit.status === 'fitted' ? weighTaken(site, before) : before;
    const picked = Math.floor(seededRandom(seed - i)() * truth.size);
    for (const [j, [reading, point]] of [...truth].entries()) {
      tally(drawn, before, reading, point);
      const inside = tally(taken, after, reading, point);
      if (j === picked && inside !== null) {
        counted += 1;
        if (inside) held += 1;
      }
    }
  }
  const blunders = { sites: 0, injected: 0, large: 0, named: 0, largeOfOwn: 0, namedOfOwn: 0 };
  for (let i = 0; i < sites; i++) {
    const simulated = simulatedSite(seed + 1e6 + i, { blunderShare: 0.03, rich: true });
    blunders.sites += 1;
    blunders.injected += simulated.blunders.size;
    if (simulated.blunders.size === 0) continue;
    const { fit } = weigh(simulated.site);
    const first = new Set(fit.blunders[0]?.map((b) => b.name));
    const seen = worstOf(simulated.blunders, (name, size) => size * Math.sqrt(redundancyOf(fit, name)));
    if (seen.size > LARGE) {
      blunders.large += 1;
      if (first.has(seen.name)) blunders.named += 1;
    }
    const own = worstOf(simulated.blunders, (_, size) => size);
    if (own.size > LARGE) {
      blunders.largeOfOwn += 1;
      if (first.has(own.name)) blunders.namedOfOwn += 1;
    }
  }
  return { sites: counted, held, drawn: summed(drawn), taken: summed(taken), blunders };
}

type Weighed = { readonly site: Site; readonly derived: ReturnType<typeof derive>; readonly fit: RunsFit };

function weigh(site: Site): Weighed {
  const derived = derive(site);
  const fit = fitRuns(site, derived);
  if (fit === null) throw new Error('nobody stopped it');
  return { site, derived, fit };
}

function weighTaken(site: Site, { derived, fit }: Weighed): Weighed {
  return weigh(takeFit(site, { fit, places: derived.points }));
}

function worstOf(
  blunders: ReadonlyMap<string, number>,
  weight: (name: string, size: number) => number,
): { readonly name: string; readonly size: number } {
  let worst = { name: '', size: 0 };
  for (const [name, size] of blunders) {
    const weighed = weight(name, size);
    if (weighed > worst.size) worst = { name, size: weighed };
  }
  return worst;
}

/** Of the better checked of an observation's parts; 0 for one that the fit does not know. */
function redundancyOf(fit: RunsFit, name: string): number {
  return Math.max(0, ...fit.observations.filter((o) => o.name === name).map((o) => o.redundancy));
}

type Sum = { marks: number; held: number; size: number };

/** Whether the zone about the shown mark holds the true point; null for a mark without a place. */
function tally(sum: Sum, { derived, fit }: Weighed, reading: string, truth: Point): boolean | null {
  const place = derived.marks.find((m) => m.reading.id === reading)?.place;
  const zone = fit.marks.get(reading)?.zone;
  if (place == null || zone === undefined) return null;
  const inside = holds(zone, { x: truth.x - place.at.x, y: truth.y - place.at.y });
  sum.marks += 1;
  sum.size += Math.sqrt(zone.semiMajor * zone.semiMinor);
  if (inside) sum.held += 1;
  return inside;
}

/** Whether an offset from a zone's middle lies in its ellipse. */
function holds(zone: SearchZone, { x, y }: Point): boolean {
  const [sin, cos] = [Math.sin(zone.azimuth), Math.cos(zone.azimuth)];
  const along = x * sin + y * cos;
  const across = x * cos - y * sin;
  return (along / zone.semiMajor) ** 2 + (across / zone.semiMinor) ** 2 <= 1;
}

function summed({ marks, held, size }: Sum) {
  return { marks, held, meanSize: size / marks };
}
