import type { Site } from '../document/site';
import { WITHIN_95 } from '../rules/sigmas';
import { type Finding, finding, type Target } from './finding';
import type { PathProfile } from './profileAt';
import { groundAt } from './profileGround';
import type { KnownInvert, ProfilePoint } from './profilePoints';
import { type DoubtfulSlopes, doubtfulSlopes } from './profileSlopes';
import type { LevelSource } from './profileSoundings';

/** What is doubtful about the levels and slopes of a path. */
export function profileFindings(profile: PathProfile, site: Site): readonly Finding[] {
  const at: Target = { kind: 'path', id: profile.path };
  const { missed, open } = doubtfulSlopes(profile);
  const sloped = missed.map(({ from, to, slope, sigma, least, verdict }) =>
    verdict === 'too-flat'
      ? finding('slope-too-flat', 'warning', at, { from, to, slope, sigma, least: least.value })
      : finding('slope-against-flow', 'warning', at, { from, to, slope, sigma }),
  );
  const aboutPoints = profile.points.flatMap((point) => [
    ...disagreement(point, profile, site),
    ...aboveGround(point, profile),
  ]);
  return [...sloped, ...aboutPoints, ...unsureSlopes(open, at)];
}

/** One note for all stretches whose slope the levels leave open: about the surest of them. */
function unsureSlopes(open: DoubtfulSlopes['open'], at: Target): readonly Finding[] {
  if (open === null) return [];
  const { others, whole } = open;
  const { from, to, slope, sigma, least } = open.surest;
  return [finding('slope-unsure', 'note', at, { from, to, slope, sigma, least: least.value, others, whole })];
}

function disagreement({ known }: ProfilePoint, { path }: PathProfile, site: Site): readonly Finding[] {
  let worst: { a: KnownInvert; b: KnownInvert; by: number; share: number } | null = null;
  for (const [i, a] of known.entries()) {
    for (const b of known.slice(i + 1)) {
      const by = Math.abs(a.invert - b.invert);
      const share = by / (WITHIN_95 * Math.hypot(a.sigma, b.sigma));
      if (share > 1 && share > (worst?.share ?? 0)) worst = { a, b, by, share };
    }
  }
  if (worst === null) return [];
  const { a, b, by } = worst;
  return [
    finding('levels-disagree', 'warning', targetOf(a.sounding.source, path), {
      by,
      allowed: WITHIN_95 * Math.hypot(a.sigma, b.sigma),
      a: nameOf(a.sounding.source, path, site),
      b: nameOf(b.sounding.source, path, site),
    }),
  ];
}

function aboveGround(point: ProfilePoint, { path, ground }: PathProfile): readonly Finding[] {
  const above = groundAt(ground, point.station);
  const [first] = point.known;
  if (above === null || first === undefined || point.invert <= above.level) return [];
  return [
    finding('invert-above-ground', 'warning', targetOf(first.sounding.source, path), {
      by: point.invert - above.level,
      station: point.station,
    }),
  ];
}

function targetOf(source: LevelSource, path: string): Target {
  switch (source.is) {
    case 'point':
      return { kind: 'path', id: path, vertex: source.vertex };
    case 'feature':
    case 'locate':
      return { kind: 'feature', id: source.feature };
    case 'join':
      return { kind: 'path', id: path };
  }
}

/** The thing that a level was measured at, by its name or id; a point of the pipe with its letter. */
function nameOf(source: LevelSource, path: string, site: Site): string {
  switch (source.is) {
    case 'point':
      return `${nameOfPath(path, site)} ${source.vertex.toUpperCase()}`;
    case 'feature':
    case 'locate':
      return site.features.find((f) => f.id === source.feature)?.name || source.feature;
    case 'join':
      return nameOfPath(source.path, site);
  }
}

function nameOfPath(id: string, site: Site): string {
  return site.paths.find((p) => p.id === id)?.name || id;
}
