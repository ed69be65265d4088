import type { Site } from '../document/site';
import { type ObservationTag, observationName } from '../fit/observationTag';

/** The name of every observation that a site can have, each once: all that people could set aside. */
export function observationNames(site: Site): readonly string[] {
  const tags: ObservationTag[] = [
    ...site.paths.flatMap(({ id: path, vertices, knownLengths = [] }) => [
      ...vertices.flatMap(({ id: vertex }): ObservationTag[] => [
        { is: 'point', path, vertex, axis: 'x' },
        { is: 'leg', path, vertex, part: 'length' },
        { is: 'stray', path, vertex, piece: 0 },
        { is: 'bend', path, vertex },
      ]),
      ...knownLengths.map(({ id: length }): ObservationTag => ({ is: 'length', path, length })),
    ]),
    ...site.runs.flatMap(({ id: run, readings }) => [
      ...(['scale', 'zero', 'riser'] as const).map((is): ObservationTag => ({ is, run })),
      ...readings.flatMap(({ id: reading }): ObservationTag[] => [
        { is: 'counter', run, reading },
        { is: 'seen', run, reading },
      ]),
    ]),
    ...site.features.flatMap((f): ObservationTag[] =>
      f.kind === 'locate' ? [{ is: 'locate', feature: f.id, part: 'along' }] : [],
    ),
    ...site.pairs.map(({ id: pair }): ObservationTag => ({ is: 'pair', pair })),
  ];
  return tags.map(observationName);
}
