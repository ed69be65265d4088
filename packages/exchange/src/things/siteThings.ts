import { flattenPath, type Point } from '@footmark/geometry';
import {
  type Derived,
  type DerivedFeature,
  markState,
  type RunsFit,
  type Shape,
  type Site,
} from '@footmark/site';
import type { Words } from '@footmark/words';
import { harmlessName } from '../harmless';

/** How far a chord lies from a bend of a pipe at most (m). */
const SAGITTA_M = 0.002;

/** What is told of a thing beside its name: numbers in metres (angles radians) unless the key says else. */
export type Facts = Readonly<Record<string, string | number | boolean>>;

/** A thing of a site as a map shows it: its name and facts made harmless, its places in the plan (m). */
export type SiteThing = {
  readonly id: string;
  readonly name: string;
  /** Of the drawing: things on it are shown and hidden together. */
  readonly layer: 'marks' | 'pipe' | DerivedFeature['spec']['layer'];
  readonly layerName: string;
  readonly shape: Shape;
  readonly points: readonly Point[];
  readonly facts: Facts;
};

/** What a site's things are told with. */
export type ThingSetting = {
  readonly site: Site;
  readonly derived: Derived;
  readonly fit: RunsFit | null;
  readonly words: Words;
};

/** Everything of a site that has a place: the marks, the pipes, the yard. */
export function siteThings(setting: ThingSetting): readonly SiteThing[] {
  return [...markThings(setting), ...pathThings(setting), ...featureThings(setting)];
}

/** The marks that have a place, each under what is painted for it. */
export function markThings({ site, derived, fit, words }: ThingSetting): readonly SiteThing[] {
  return derived.marks.flatMap((mark): readonly SiteThing[] => {
    const { place, reading, run, label } = mark;
    if (place === null) return [];
    const hole = fit?.marks.get(reading.id)?.zone.hole;
    return [
      {
        id: `mark:${run.id}:${reading.id}`,
        name: harmlessName(label),
        layer: 'marks',
        layerName: words.mapLayerName('marks'),
        shape: 'point',
        points: [place.at],
        facts: {
          kind: 'mark',
          seen: words.observationName(reading.seen),
          state: words.markStateName(markState(mark, derived.locates)),
          path: harmlessName(words.targetName({ kind: 'path', id: place.path }, site)),
          station: rounded(place.station),
          ...(hole === undefined ? {} : { holeLength: rounded(hole.length), holeWidth: rounded(hole.width) }),
          ...(reading.note === '' ? {} : { note: harmlessName(reading.note) }),
        },
      },
    ];
  });
}

function pathThings({ site, derived, words }: ThingSetting): readonly SiteThing[] {
  return [...derived.paths.values()].map(({ path, line, length }) => ({
    id: `path:${path.id}`,
    name: harmlessName(words.targetName({ kind: 'path', id: path.id }, site)),
    layer: 'pipe',
    layerName: words.mapLayerName('pipe'),
    shape: 'line',
    points: flattenPath(line, SAGITTA_M),
    facts: { kind: 'pipe', state: words.pathStateName(path.state), length: rounded(length) },
  }));
}

function featureThings({ site, derived, words }: ThingSetting): readonly SiteThing[] {
  return [...derived.features.values()].map(({ feature, spec, outline, measured }) => ({
    id: `feature:${feature.id}`,
    name: harmlessName(words.targetName({ kind: 'feature', id: feature.id }, site)),
    layer: spec.layer,
    layerName: words.layerName(spec.layer),
    shape: spec.shape,
    points: outline,
    facts: { kind: feature.kind, measured: measured.every(Boolean), ...fieldFacts(feature, spec) },
  }));
}

/** The fields of a feature that are one value; pictures stay on the device. */
function fieldFacts({ fields }: DerivedFeature['feature'], spec: DerivedFeature['spec']): Facts {
  const facts: Record<string, string | number | boolean> = {};
  for (const [name, value] of Object.entries(fields)) {
    if (spec.fields[name]?.input.as === 'file') continue;
    if (typeof value === 'number') facts[name] = rounded(value);
    else if (typeof value === 'boolean') facts[name] = value;
    else if (typeof value === 'string') facts[name] = harmlessName(value);
  }
  return facts;
}

/** To a tenth of a millimetre. */
function rounded(value: number): number {
  return Number(value.toFixed(4)) + 0;
}
