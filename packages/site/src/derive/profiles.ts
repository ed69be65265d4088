import { stationOfVertex } from '@footmark/geometry';
import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';
import type { DerivedFeature } from './deriveFeatures';
import type { DerivedPath } from './derivePaths';
import type { Finding } from './finding';
import type { Mark } from './marks';
import type { PathProfile } from './profileAt';
import { profileFindings } from './profileFindings';
import { firmPoints } from './profileFirm';
import { buildingsOf, evenGround, type GroundLine, groundLine, levelledPoints } from './profileGround';
import { invertAt, lineThrough, sagsOf, withSags } from './profileLine';
import { knownInverts, profilePoints } from './profilePoints';
import { type Pool, poolsOf } from './profileSags';
import { profileSlopes } from './profileSlopes';
import { locateDepths, pipeSizeAt, type Sounding, soundingsOf } from './profileSoundings';
import type { Ways } from './sondePlace';

type Setting = Ways & {
  readonly site: Site;
  readonly features: ReadonlyMap<string, DerivedFeature>;
  readonly marks: readonly Mark[];
};

/** With as many inverts as this in levels, depths that have no ground to count from are left aside. */
const ENOUGH_LEVELS = 2;

/** Every path in elevation, and what is doubtful about it. */
export function deriveProfiles(setting: Setting): {
  readonly profiles: ReadonlyMap<string, PathProfile>;
  readonly findings: readonly Finding[];
} {
  const { site, features, paths } = setting;
  const levelled = levelledPoints(features);
  const buildings = buildingsOf(features);
  const locates = locateDepths(setting);
  const wet = setting.marks.filter((m) => m.reading.water !== undefined);
  const sigma = sigmaOf(site, 'tapedLevel');
  const profiles = new Map<string, PathProfile>();
  const begun = new Set<string>();
  /** A path that joins another takes its end's level from there, so that one comes first. */
  const profileOf = (on: DerivedPath): PathProfile => {
    const { id } = on.path;
    const before = profiles.get(id);
    if (before !== undefined) return before;
    begun.add(id);
    const main = on.joins === null || begun.has(on.joins.path) ? undefined : paths.get(on.joins.path);
    if (main !== undefined) profileOf(main);
    const profile = profileFrom(
      site,
      on,
      [...soundingsOf(on, locates, setting), ...ofJoin(on, profiles)],
      groundLine(on, levelled, buildings, sigma),
      poolsOf(on, wet, setting),
    );
    profiles.set(id, profile);
    return profile;
  };
  const findings = [...paths.values()].flatMap((on) => profileFindings(profileOf(on), site));
  return { profiles, findings };
}

function profileFrom(
  site: Site,
  on: DerivedPath,
  soundings: readonly Sounding[],
  ground: GroundLine,
  pools: readonly Pool[],
): PathProfile {
  const drops = on.path.vertices.flatMap((v, i) =>
    v.drop === undefined || v.drop === 0
      ? []
      : [{ station: stationOfVertex(on.line, i), height: v.drop, vertex: v.id }],
  );
  const inLevels = knownInverts(soundings, ground);
  const even = evenGround(ground);
  const inDepths = inLevels.length >= ENOUGH_LEVELS ? [] : knownInverts(soundings, even);
  const below = inDepths.length > inLevels.length;
  const points = profilePoints(below ? inDepths : inLevels, drops);
  const used = new Set(points.flatMap((p) => p.known.map((k) => k.sounding)));
  const { stretches } = on.path;
  const firm = firmPoints(points, drops);
  const straight = lineThrough(firm, drops, stretches);
  const sags = below ? [] : sagsOf(straight, pools);
  return {
    path: on.path.id,
    length: on.length,
    heights: below ? 'below-ground' : 'levels',
    ground: below ? even : ground,
    points,
    firm,
    drops,
    line: withSags(straight, sags),
    sags,
    unused: soundings.filter((s) => 'depth' in s && !used.has(s)),
    ...(below ? { slopes: [], whole: null } : profileSlopes(site, firm, drops, stretches)),
  };
}

/** A branch's end lies within this share of the bore of the pipe that it joins above or below its invert, as a standard deviation. */
const JOIN_SHARE = 1 / 4;

/** A branch comes in about at the invert of the pipe that it joins, where that is known. */
function ofJoin(
  { joins, length }: DerivedPath,
  profiles: ReadonlyMap<string, PathProfile>,
): readonly Sounding[] {
  const main = profiles.get(joins?.path ?? '');
  if (joins === null || main === undefined || main.heights !== 'levels') return [];
  const there = invertAt(main.line, joins.station);
  if (there === null || there.by === 'beyond') return [];
  const within = JOIN_SHARE * pipeSizeAt(main.line.stretches, joins.station).diameter;
  return [
    {
      station: length,
      source: { is: 'join', path: joins.path },
      level: there.invert,
      sigma: Math.hypot(there.sigma, within),
    },
  ];
}
