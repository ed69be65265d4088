import { azimuthBetween, normalizeAzimuth, type Point } from '@footmark/geometry';
import { placeOfTapes } from '../derive/placeOfTapes';
import type { AsFound } from '../document/asFound';
import type { Frame, North } from '../document/frame';
import type { Path } from '../document/path';
import { refKey } from '../document/pointOwners';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import type { Underlay } from '../document/underlay';

type Places = ReadonlyMap<string, { at: Point }>;

/**
 * Frees the frame and the pictures from points for which `gone` holds, so that nothing turns or jumps: a north told by such a line
 * becomes its azimuth, a pair with such a point its place (`places`, by `of/at`). Control points on them go too. Runs and readings
 * lose the name, known lengths of pipe that ended there go. What a crew taped from there stays where that puts it.
 */
export function releaseSiteRefs(site: Site, gone: (ref: Ref) => boolean, places: Places): Site {
  const frame = releasedFrame(site.frame, gone, places);
  const underlays = site.underlays.map((u) => releasedUnderlay(u, gone, places));
  const sameUnderlays = underlays.every((u, i) => u === site.underlays[i]);
  const runs = site.runs.map((run) => releasedRun(run, gone));
  const sameRuns = runs.every((run, i) => run === site.runs[i]);
  const paths = site.paths.map((path) => releasedPath(path, gone));
  const samePaths = paths.every((path, i) => path === site.paths[i]);
  const asFound = releasedFinds(site, gone, places);
  const sameFinds = asFound === site.asFound;
  if (frame === site.frame && sameUnderlays && sameRuns && samePaths && sameFinds) return site;
  return {
    ...site,
    frame,
    underlays: sameUnderlays ? site.underlays : underlays,
    runs: sameRuns ? site.runs : runs,
    paths: samePaths ? site.paths : paths,
    asFound,
  };
}

/** A zero at a point that is gone is taken for one in the pipe at the entry: the finding about its readings shows what that does. */
function releasedRun(run: Run, gone: (ref: Ref) => boolean): Run {
  const { zero } = run;
  const freed = run.readings.map((reading): Reading => {
    if (reading.seenAt === undefined || !gone(reading.seenAt)) return reading;
    const { seenAt: _, ...rest } = reading;
    return rest;
  });
  const readings = freed.every((r, i) => r === run.readings[i]) ? run.readings : freed;
  if (zero.at === 'point' && gone(zero.point)) {
    return { ...run, readings, zero: { at: 'in-pipe', counter: zero.counter } };
  }
  return readings === run.readings ? run : { ...run, readings };
}

function releasedPath(path: Path, gone: (ref: Ref) => boolean): Path {
  const lengths = path.knownLengths?.filter(
    ({ from, to }) => !gone({ of: path.id, at: from }) && !gone({ of: path.id, at: to }),
  );
  return lengths === undefined || lengths.length === path.knownLengths?.length
    ? path
    : { ...path, knownLengths: lengths };
}

function releasedFrame(frame: Frame, gone: (ref: Ref) => boolean, places: Places): Frame {
  const north = releasedNorth(frame.north, gone, places);
  const control = frame.control.filter((c) => !gone(c.point));
  if (north === frame.north && control.length === frame.control.length) return frame;
  return { north, control };
}

function releasedNorth(north: North, gone: (ref: Ref) => boolean, places: Places): North {
  if ((north.by !== 'line' && north.by !== 'compass') || !(gone(north.from) || gone(north.to))) return north;
  const [a, b] = [places.get(refKey(north.from))?.at, places.get(refKey(north.to))?.at];
  if (a === undefined || b === undefined) return { by: 'assumed' };
  const truth = north.by === 'line' ? north.azimuth : north.reading + north.declination;
  return { by: 'typed', azimuth: normalizeAzimuth(truth - azimuthBetween(a, b)) };
}

function releasedUnderlay(underlay: Underlay, gone: (ref: Ref) => boolean, places: Places): Underlay {
  const { fit } = underlay;
  if (fit.by !== 'pairs' || !fit.pairs.some(({ to }) => to.is === 'point' && gone(to.point))) return underlay;
  const pairs = fit.pairs.map((pair) => {
    const at =
      pair.to.is === 'point' && gone(pair.to.point) ? places.get(refKey(pair.to.point))?.at : undefined;
    return at === undefined ? pair : { ...pair, to: { is: 'place' as const, at: { x: at.x, y: at.y } } };
  });
  return { ...underlay, fit: { ...fit, pairs } };
}

function releasedFinds(site: Site, gone: (ref: Ref) => boolean, places: Places): AsFound[] {
  const freed = site.asFound.map((found): AsFound => {
    const { where } = found;
    if (where?.by !== 'tapes' || !where.tapes.some(({ from }) => gone(from))) return found;
    const place = placeOfTapes(site, where, (ref) => places.get(refKey(ref))?.at);
    return place === null ? found : { ...found, where: { by: 'finger', x: place.x, y: place.y } };
  });
  return freed.every((f, i) => f === site.asFound[i]) ? site.asFound : freed;
}
