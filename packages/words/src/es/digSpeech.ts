import { formatDiameter, type Site } from '@footmark/site';
import { volumeText } from '../amountText';
import { lengthText, slopeText } from '../measureText';
import { areaText } from './digMeasure';
import { andList } from './listText';
import { sureText } from './sureText';
import { markInText, targetInText } from './thingName';

/** What sentences about digs are made with: names with their articles, and measures, as they stand inside one. */
export type DigSpeech = {
  /** By its name, else by what it is and where. */
  readonly dig: (id: string) => string;
  readonly feature: (id: string) => string;
  readonly features: (ids: readonly string[]) => string;
  readonly path: (id: string) => string;
  readonly mark: (run: string, reading: string) => string;
  /** A length that was computed (m), as coarse as such lengths are. */
  readonly size: (metres: number) => string;
  /** A length that a rule or a person gave (m). */
  readonly length: (metres: number) => string;
  /** The inside of a pipe (m). */
  readonly diameter: (metres: number) => string;
  /** A fall over run. */
  readonly slope: (fallOverRun: number) => string;
  readonly area: (squareMetres: number) => string;
  readonly volume: (cubicMetres: number) => string;
};

export function digSpeech(site: Site): DigSpeech {
  const { units } = site;
  const feature = (id: string) => targetInText({ kind: 'feature', id }, site);
  return {
    dig: (id) => targetInText({ kind: 'dig', id }, site),
    feature,
    features: (ids) => andList(ids.map(feature)),
    mark: (run, id) => markInText({ kind: 'reading', run, id }, site),
    path: (id) => targetInText({ kind: 'path', id }, site),
    size: (metres) => sureText(metres, units),
    length: (metres) => lengthText(metres, units),
    diameter: (metres) => formatDiameter(metres, units.diameter),
    slope: slopeText,
    area: (squareMetres) => areaText(squareMetres, units),
    volume: (cubicMetres) => volumeText(cubicMetres, units),
  };
}
