import type { Feature, Path, Site } from '../../packages/site/src/index';
import type { Direction, Measured, MeasuredThing } from './measuredYard';
import { pointName } from './plane';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

type Kept = Record<string, unknown>;

/** How every point of a list must stand in a site file: by name, in metres and radians, other points by `of/at`. */
export function keptOf(things: readonly MeasuredThing[], site: Site): ReadonlyMap<string, Kept> {
  const refs = new Map<string, string>();
  for (const thing of things) {
    const id = ownerNamed(site, thing.name).id;
    for (const i of thing.points.keys()) refs.set(pointName(thing, i), `${id}/${'abcdefgh'.charAt(i)}`);
  }
  const ref = (name: string) => refs.get(name) ?? `nobody/${name}`;
  return new Map(
    things.flatMap((thing) =>
      thing.points.map((point, i) => [pointName(thing, i), kept(point, ref)] as const),
    ),
  );
}

/** How every point of a list stands in a site file, written alike. */
export function keptIn(site: Site, things: readonly MeasuredThing[]): ReadonlyMap<string, Kept> {
  return new Map(
    things.flatMap((thing) =>
      ownerNamed(site, thing.name).vertices.map(
        (v, i) => [pointName(thing, i), plain(v.spot) as Kept] as const, // a spot is an object
      ),
    ),
  );
}

function ownerNamed(site: Site, name: string): Feature | Path {
  const [found, another] = [...site.features, ...site.paths].filter((owner) => owner.name === name);
  if (found === undefined || another !== undefined) throw new Error(`not one thing is called ${name}`);
  return found;
}

function kept(point: Measured, ref: (name: string) => string): Kept {
  const metres = ({ feet }: { readonly feet: number }) => rounded(feet * FOOT_M);
  switch (point.by) {
    case 'leg': {
      const distance = metres(point.length);
      return point.direction.as === 'turn'
        ? { by: 'turn', turn: radians(point.direction), distance }
        : { by: 'course', azimuth: radians(point.direction), distance };
    }
    case 'coordinates':
      return { by: 'coordinates', x: metres(point.east), y: metres(point.north) };
    case 'bearing':
      return {
        by: 'bearing',
        from: ref(point.from),
        azimuth: radians(point.direction),
        distance: metres(point.distance),
      };
    case 'offset': {
      const out = metres(point.out);
      return {
        by: 'offset',
        from: ref(point.from),
        to: ref(point.to),
        along: metres(point.along),
        out: point.side === 'Right' || out === 0 ? out : -out,
      };
    }
    case 'tapes':
      return {
        by: 'tapes',
        side: point.side.toLowerCase(),
        tapes: point.tapes.map(({ from, length }) => ({ from: ref(from), distance: metres(length) })),
      };
    case 'between': {
      const fraction = { '¼': 0.25, Middle: 0.5, '¾': 0.75 }[point.share];
      return { by: 'between', from: ref(point.from), to: ref(point.to), fraction };
    }
    case 'at':
      return { by: 'at', point: ref(point.point) };
    case 'arc': {
      const sweep = radians(point.angle);
      return {
        by: 'arc',
        radius: metres(point.radius),
        sweep: point.turn === 'Right' ? sweep : -sweep,
        chord: null,
      };
    }
  }
}

function radians({ degrees }: Direction): number {
  return rounded((degrees * Math.PI) / 180);
}

/** To a hundredth of a micrometre, or of a microradian. */
function rounded(n: number): number {
  return Math.round(n * 1e8) / 1e8 + 0;
}

/** The same with rounded numbers, points as `of/at`, and without the place that chose between two crossings. */
function plain(value: unknown): unknown {
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  if ('of' in value && 'at' in value) return `${value.of}/${value.at}`;
  const entries = Object.entries(value).filter(([key]) => key !== 'near');
  return Object.fromEntries(entries.map(([key, part]) => [key, plain(part)]));
}
