import type { Point } from '@footmark/geometry';
import { derive, fitRuns, type RunsFit, type SearchZone, type Site, takeFit } from '@footmark/site';
import { uniform } from './normal';
import { simulatedSite } from './simulatedSite';

/** How a whole lot of simulated sites came out. */
export type TruthTable = {
  readonly sites: number;
  /** One mark of each site, as it is shown once the fit was taken: how many zones hold the true point. */
  readonly held: number;
  /** Of all marks of all sites: as drawn, and after the fit was taken. */
  readonly drawn: { readonly marks: number; readonly held: number; readonly meanSize: number };
  readonly taken: { readonly marks: number; readonly held: number; readonly meanSize: number };
  readonly blunders: {
    readonly sites: number;
    readonly injected: number;
    readonly large: number;
    readonly named: number;
  };
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
    const picked = Math.floor(uniform(seed - i)() * truth.size);
    for (const [j, [reading, point]] of [...truth].entries()) {
      tally(drawn, before, reading, point);
      const inside = tally(taken, after, reading, point);
      if (j === picked && inside !== null) {
        counted += 1;
        if (inside) held += 1;
      }
    }
  }
  const blunders = { sites: 0, injected: 0, large: 0, named: 0 };
  for (let i = 0; i < sites; i++) {
    const simulated = simulatedSite(seed + 1e6 + i, { blunderShare: 0.03, rich: true });
    blunders.sites += 1;
    blunders.injected += simulated.blunders.size;
    const worst = [...simulated.blunders].sort((a, b) => b[1] - a[1])[0];
    if (worst === undefined || worst[1] < LARGE) continue;
    blunders.large += 1;
    const named = weigh(simulated.site).fit.blunders[0]?.map((b) => b.name) ?? [];
    if (named.includes(worst[0])) blunders.named += 1;
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
export function holds(zone: SearchZone, { x, y }: Point): boolean {
  const [sin, cos] = [Math.sin(zone.azimuth), Math.cos(zone.azimuth)];
  const along = x * sin + y * cos;
  const across = x * cos - y * sin;
  return (along / zone.semiMajor) ** 2 + (across / zone.semiMinor) ** 2 <= 1;
}

function summed({ marks, held, size }: Sum) {
  return { marks, held, meanSize: size / marks };
}
