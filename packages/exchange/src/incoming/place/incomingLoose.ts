import {
  type Feature,
  type FeatureKind,
  kindSpec,
  type LooseThings,
  letters,
  MOST_IN_SITE,
  MOST_VERTICES,
  type Spot,
} from '@footmark/site';
import type { IncomingFinding } from '@footmark/words';
import type { PlacedIncoming, PlacedThing } from './placedIncoming';

/** What of a file is one kind of thing: people say which, once for all of it. */
export type IncomingGroup = {
  readonly key: string;
  readonly layer: string;
  readonly shape: PlacedThing['shape'];
  readonly count: number;
  /** By its geometry alone: the kind that claims least. */
  readonly suggestion: FeatureKind;
};

/** Kinds that no rule and no clearance asks about. */
const CLAIMS_LEAST: Readonly<Record<PlacedThing['shape'], FeatureKind>> = {
  point: 'note',
  line: 'fence',
  area: 'patio',
};

/** The groups of what came in, by layer and shape, in the order of the file. */
export function incomingGroups({ things }: PlacedIncoming): readonly IncomingGroup[] {
  const groups = new Map<string, { layer: string; shape: PlacedThing['shape']; count: number }>();
  for (const { layer, shape } of things) {
    const key = groupKey({ layer, shape });
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { layer, shape, count: 1 });
    else known.count += 1;
  }
  return [...groups].map(([key, group]) => ({ key, ...group, suggestion: CLAIMS_LEAST[group.shape] }));
}

function groupKey({ layer, shape }: Pick<PlacedThing, 'layer' | 'shape'>): string {
  return `${shape}:${layer}`;
}

/** What people said of it: the kind of each group, by its key (absent: leave it out), and how sure its places are. */
export type IncomingTaking = {
  readonly kinds: ReadonlyMap<string, FeatureKind>;
  /** Standard deviation (m) of the places; null: as if put there by eye. */
  readonly sigma: number | null;
  /** Whether its heights count from the site's own datum and become levels; those of maps and receivers rarely do. */
  readonly levels: boolean;
};

/** What goes into the site, for `pasteThings`, with ids of its own (`i0`, `i1` …), and what must be known before. */
export type IncomingLoose = { readonly things: LooseThings; readonly findings: readonly IncomingFinding[] };

/**
 * Makes features of what came in. A group whose kind has another shape is left out: ask for a kind of its own shape. Past what a site holds nothing
 * is taken, so that nothing is half loaded.
 */
export function incomingLoose(
  { things }: PlacedIncoming,
  taking: IncomingTaking,
  featuresThere: number,
): IncomingLoose {
  const features: Feature[] = [];
  const nameOf = numberedNames();
  let tooLong = 0;
  for (const thing of things) {
    const kind = taking.kinds.get(groupKey(thing));
    if (kind === undefined || kindSpec(kind).shape !== thing.shape) continue;
    if (thing.points.length > MOST_VERTICES) tooLong += 1;
    else
      features.push(featureOf({ ...thing, name: nameOf(thing.name) }, kind, `i${features.length}`, taking));
  }
  const room = Math.max(0, MOST_IN_SITE.features - featuresThere);
  const findings: IncomingFinding[] = [];
  if (tooLong > 0)
    findings.push({ code: 'too-many-corners', severity: 'warning', count: tooLong, most: MOST_VERTICES });
  if (features.length > room) {
    findings.push({ code: 'too-many-for-a-site', severity: 'error', count: features.length, room });
    return { things: { features: [], paths: [] }, findings };
  }
  return { things: { features, paths: [] }, findings };
}

/** Names with a number from the second of each on: many things of one name are many things. */
function numberedNames(): (name: string) => string {
  const used = new Map<string, number>();
  return (name) => {
    if (name === '') return '';
    const n = (used.get(name) ?? 0) + 1;
    used.set(name, n);
    return n === 1 ? name : `${name} ${n}`;
  };
}

function featureOf(
  thing: PlacedThing,
  kind: FeatureKind,
  id: string,
  { sigma, levels }: IncomingTaking,
): Feature {
  const spot = ({ x, y }: { x: number; y: number }): Spot =>
    sigma === null ? { by: 'finger', x, y } : { by: 'coordinates', x, y, sigma };
  const level = levels && (kind === 'spot-level' || kind === 'benchmark') ? thing.height : null;
  return {
    id,
    kind,
    name: thing.name,
    vertices: thing.points.map((p, i) => ({ id: letters(i).toLowerCase(), spot: spot(p) })),
    fields: level === null ? {} : { level },
  } as Feature; // its fields are those of its kind: none, or the level of a kind that has one
}
