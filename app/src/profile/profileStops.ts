import { stationOfVertex } from '@footmark/geometry';
import {
  type Derived,
  type KnownInvert,
  type PathProfile,
  type ProfileAt,
  type ProfileSlope,
  profileAt,
  profileCrossings,
  type Site,
  type Target,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { words } from '../words';

/** A place of a pipe that has something to say. */
export type ProfileStop = {
  readonly station: number;
  readonly names: readonly string[];
  /** What a press on it chooses. */
  readonly target: Target | null;
  readonly at: ProfileAt;
  readonly known: readonly KnownInvert[];
  /** From here to the next place whose level is good. */
  readonly slope: ProfileSlope | null;
};

type Found = { readonly station: number; readonly name: string; readonly target: Target | null };

/** Places nearer than this (m) are one stop. */
const SAME_STOP_M = 0.05;

/** The points of a pipe, what stands on it, what was seen in it, what crosses it, and where its level is known; with the flow. */
export function profileStops(site: Site, derived: Derived, profile: PathProfile): readonly ProfileStop[] {
  const found: Found[] = [
    ...pointsOf(site, derived, profile),
    ...marksOf(derived, profile),
    ...crossingsOf(site, derived, profile),
    ...profile.points.map((p) => ({ station: p.station, name: '', target: null })),
    ...profile.sags.flatMap(({ depths }) =>
      depths
        .filter((d) => d.depth === 0)
        .map((d) => ({ station: d.station, name: 'Edge of the water', target: null })),
    ),
  ].sort((a, b) => a.station - b.station);
  const stops: Found[][] = [];
  for (const one of found) {
    const last = stops.at(-1);
    if (last?.[0] !== undefined && one.station - last[0].station <= SAME_STOP_M) last.push(one);
    else stops.push([one]);
  }
  return stops.flatMap((parts) => {
    const [first] = parts;
    if (first === undefined) return [];
    const isHere = (station: number) => Math.abs(station - first.station) <= SAME_STOP_M;
    return [
      {
        station: first.station,
        names: [...new Set(parts.map((p) => p.name).filter((name) => name !== ''))],
        target: parts.find((p) => p.target !== null)?.target ?? null,
        at: profileAt(profile, first.station),
        known: profile.points.filter((p) => isHere(p.station)).flatMap((p) => p.known),
        slope: profile.slopes.find((s) => isHere(s.from)) ?? null,
      },
    ];
  });
}

function pointsOf(site: Site, derived: Derived, { path, drops }: PathProfile): readonly Found[] {
  const on = derived.paths.get(path);
  return (on?.path.vertices ?? []).map((v, i) => {
    const tied = on?.tiedTo[i] ?? null;
    const thing = site.features.find((f) => f.id === tied);
    const drop = drops.find((d) => d.vertex === v.id);
    const parts = [
      thing === undefined
        ? `Point ${v.id.toUpperCase()}`
        : words.targetName({ kind: 'feature', id: thing.id }, site),
      ...(drop === undefined ? [] : [`drops ${lengthText(drop.height, site.units)}`]),
    ];
    return {
      station: on === undefined ? 0 : stationOfVertex(on.line, i),
      name: parts.join(', '),
      target: { kind: 'path', id: path, vertex: v.id },
    };
  });
}

function marksOf({ marks }: Derived, { path }: PathProfile): readonly Found[] {
  return marks.flatMap(({ run, reading, label, place }) =>
    place?.path !== path
      ? []
      : [
          {
            station: place.station,
            name: `${label} ${words.observationName(reading.seen)}`,
            target: { kind: 'reading', run: run.id, id: reading.id },
          },
        ],
  );
}

function crossingsOf(site: Site, derived: Derived, profile: PathProfile): readonly Found[] {
  return profileCrossings(profile, derived).map(({ feature, station, clear }) => {
    const name = words.targetName({ kind: 'feature', id: feature }, site);
    const apart =
      clear === null
        ? ''
        : clear < 0
          ? ', at the height of the pipe'
          : `, ${lengthText(clear, site.units)} clear`;
    return { station, name: `${name} crosses${apart}`, target: { kind: 'feature', id: feature } };
  });
}
