import { formatDiameter, type Site, type Target, type Units } from '@footmark/site';
import { volumeText } from './amountText';
import { lengthText, slopeText } from './measureText';
import type { CardThing } from './said';

/** What sentences about digs are made with: names and measures as they stand inside one. */
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

/** How a language calls things inside a sentence, lists them, and tells how unsure something is. */
export type DigTongue = {
  readonly target: (target: Target, site: Site) => string;
  readonly mark: (target: Target, site: Site) => string;
  readonly dig: (id: string, site: Site) => string;
  readonly andList: (names: readonly string[]) => string;
  readonly sureText: (metres: number, units: Pick<Units, 'length'>) => string;
  readonly areaText: (squareMetres: number, units: Pick<Units, 'length'>) => string;
  /** What is spoken of on its own card. */
  readonly thisOne: (here: CardThing, site: Site) => string;
};

/** How a language speaks of a site's digs; `here`, on its own card, a thing is not named again. */
export function digSpeechIn(tongue: DigTongue, site: Site, here?: CardThing): DigSpeech {
  const { units } = site;
  const named = (kind: CardThing['kind'], name: (id: string) => string) => (id: string) =>
    here !== undefined && here.kind === kind && here.id === id ? tongue.thisOne(here, site) : name(id);
  const feature = named('feature', (id) => tongue.target({ kind: 'feature', id }, site));
  return {
    dig: named('dig', (id) => tongue.dig(id, site)),
    feature,
    features: (ids) => tongue.andList(ids.map(feature)),
    mark: (run, reading) =>
      named('reading', (id) => tongue.mark({ kind: 'reading', run, id }, site))(reading),
    path: named('path', (id) => tongue.target({ kind: 'path', id }, site)),
    size: (metres) => tongue.sureText(metres, units),
    length: (metres) => lengthText(metres, units),
    diameter: (metres) => formatDiameter(metres, units.diameter),
    slope: slopeText,
    area: (squareMetres) => tongue.areaText(squareMetres, units),
    volume: (cubicMetres) => volumeText(cubicMetres, units),
  };
}
