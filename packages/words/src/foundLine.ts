import type { FoundReport, FoundState, ObservationKind, PipeMaterial, Site, Units } from '@footmark/site';
import { lengthText } from './measureText';
import { atStart, inSentence } from './named';

/** What a language says of the parts of a find. */
export type FoundSpeech = {
  readonly states: Readonly<Record<FoundState, string>>;
  readonly byTapes: string;
  readonly atPaint: string;
  /** Off the paint (m), neither of them 0: along the pipe with the flow positive, and to the right of it. */
  readonly alongText: (metres: number, units: Units) => string;
  readonly acrossText: (metres: number, units: Units) => string;
  readonly depthText: (length: string, to: 'top' | 'invert') => string;
  readonly observations: Readonly<Record<ObservationKind, string>>;
  readonly materials: Readonly<Record<PipeMaterial, string>>;
};

/** What was found, in a line: whether, where, how deep, what, of what. */
export function foundLineIn(speech: FoundSpeech): (found: FoundReport, site: Pick<Site, 'units'>) => string {
  return ({ state, where, depth, seen, material }, { units }) => {
    const parts = [
      speech.states[state],
      ...placeTexts(where, units, speech),
      ...(depth === undefined ? [] : [speech.depthText(lengthText(depth.depth, units), depth.to)]),
      ...(seen === undefined ? [] : [speech.observations[seen]]),
      ...(material === undefined || material === 'unknown' ? [] : [speech.materials[material]]),
    ];
    return `${atStart(parts.map(inSentence).join(', '))}.`;
  };
}

function placeTexts(where: FoundReport['where'], units: Units, speech: FoundSpeech): readonly string[] {
  if (where === undefined) return [];
  if (where.by !== 'paint') return [speech.byTapes];
  const { along, right } = where;
  if (along === 0 && right === 0) return [speech.atPaint];
  return [
    ...(along === 0 ? [] : [speech.alongText(along, units)]),
    ...(right === 0 ? [] : [speech.acrossText(right, units)]),
  ];
}
