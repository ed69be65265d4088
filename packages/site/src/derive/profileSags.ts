import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';
import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';
import { pipeSizeAt } from './profileSoundings';
import { placeOnRoute } from './runRoute';
import type { Ways } from './sondePlace';

/** Water in the pipe at a station, as a reading judged it (m above the invert there); 0: dry, which ends a pool. */
export type WaterDepth = {
  readonly station: number;
  readonly depth: number;
  readonly sigma: number;
  readonly reading: string;
};

/** Standing water that one run saw, with the flow, from where it begins to where it ends as far as that is known. */
export type Pool = { readonly run: string; readonly depths: readonly WaterDepth[] };

/** The pools of a path, run by run. Readings that say nothing of water are passed over: a pool ends where one says that it is dry. */
export function poolsOf(on: DerivedPath, marks: readonly Mark[], setting: Setting): readonly Pool[] {
  const depths = new Map<string, WaterDepth[]>();
  for (const mark of marks) {
    if (mark.reading.water === undefined || mark.place?.path !== on.path.id) continue;
    const seen = depths.get(mark.run.id) ?? [];
    depths.set(mark.run.id, [...seen, ...waterOf(on, mark, mark.reading.water, setting)]);
  }
  return [...depths].flatMap(([run, seen]) => pools(seen).map((pool) => ({ run, depths: pool })));
}

type Setting = Ways & { readonly site: Site };

/** Water that goes on up to a second count is dry at both ends and as deep as it was judged in the middle between them. */
function waterOf(
  on: DerivedPath,
  { run, reading, trace, place }: Mark,
  share: number,
  { site, paths, routes }: Setting,
): readonly WaterDepth[] {
  const at = (station: number, part: number): WaterDepth => {
    const { diameter } = pipeSizeAt(on.path.stretches, station);
    const sigma = part > 0 ? sigmaOf(site, 'waterShare') * diameter : 0;
    return { station, depth: part * diameter, sigma, reading: reading.id };
  };
  const from = place?.station ?? 0;
  const route = routes.get(run.id);
  if (reading.to === undefined || route === undefined || share === 0) return [at(from, share)];
  const end = placeOnRoute(route, paths, trace.along + trace.scale * (reading.to - reading.counter));
  if (end?.path !== on.path.id || end.station === from) return [at(from, share)];
  return [at(from, 0), at((from + end.station) / 2, share), at(end.station, 0)];
}

function pools(seen: readonly WaterDepth[]): readonly (readonly WaterDepth[])[] {
  const found: WaterDepth[][] = [];
  let open: WaterDepth[] = [];
  const close = () => {
    if (open.some((d) => d.depth > 0)) found.push(open);
  };
  for (const depth of seen.toSorted((a, b) => a.station - b.station)) {
    if (depth.depth > 0) {
      open.push(depth);
      continue;
    }
    // a dry place ends the pool before it and begins the next
    open.push(depth);
    close();
    open = [depth];
  }
  close();
  return found;
}
