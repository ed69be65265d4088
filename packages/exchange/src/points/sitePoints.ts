import { ok, type Point, type Result } from '@footmark/geometry';
import { type Derived, type DerivedFeature, type Site, setOutsOf } from '@footmark/site';
import type { Words } from '@footmark/words';
import { plainText } from '../harmless';
import { amount } from '../tableCells';
import { type Coordinates, fileFrame } from '../things/coordinates';
import type { EarthProblem } from '../things/onEarth';

/** A point for a surveyor's instrument: where, its level (m) where one was measured, and what it is. */
type SurveyPoint = { readonly at: Point; readonly level: number | null; readonly text: string };

/** The letters of the order that the columns are in; it goes into the file's name as well. */
export const POINTS_ORDER = 'PNEZD';

/**
 * Points as survey instruments take them: number, northing, easting, elevation, description, no header and no quotes (common practice, no
 * standard), but two comment lines at the top that state order, coordinates and unit. Marks first, then what sets proposed pipes out,
 * then the yard's points. An elevation that was not measured is empty, never 0.
 */
export function sitePoints(
  site: Site,
  derived: Derived,
  words: Words,
  coordinates: Coordinates,
): Result<string, EarthProblem> {
  const frame = fileFrame(site, derived, coordinates);
  if (!frame.ok) return frame;
  const { unit, place } = frame.value;
  const where = words.fileFrameText(coordinates.is === 'site' ? null : coordinates.grid.system);
  const lines = [
    `# ${[...POINTS_ORDER].join(',')} (point, northing, easting, elevation, description)`,
    `# ${where} ${words.fileUnitText(unit)}`,
  ];
  for (const [i, { at, level, text }] of surveyPoints(site, derived, words).entries()) {
    const placed = place(at);
    if (!placed.ok) return placed;
    const height = level === null ? '' : amount(level, unit).toFixed(DECIMALS);
    const { x, y } = placed.value;
    lines.push([i + 1, y.toFixed(DECIMALS), x.toFixed(DECIMALS), height, text].join(','));
  }
  return ok(`${lines.join('\r\n')}\r\n`);
}

/** Below a third of a millimetre in either unit. */
const DECIMALS = 3;

function surveyPoints(site: Site, derived: Derived, words: Words): readonly SurveyPoint[] {
  const marks = derived.marks.flatMap(({ label, place, reading }): readonly SurveyPoint[] =>
    place === null
      ? []
      : [{ at: place.at, level: null, text: description(`${label} ${words.observationName(reading.seen)}`) }],
  );
  const setOut = setOutsOf(site, derived).flatMap(({ points }) =>
    points.map((point) => ({
      at: point.at,
      level: point.invert?.invert ?? null,
      // paint stands on the ground: what the level is of has to be said
      text: description(
        [
          point.label,
          words.setOutName(point),
          ...(point.invert === null ? [] : [words.fieldName('manhole', 'invert')]),
        ].join(' '),
      ),
    })),
  );
  const yard = [...derived.features.values()].flatMap(({ feature, spec, points }): readonly SurveyPoint[] => {
    const [at] = points;
    if (spec.shape !== 'point' || at === undefined) return [];
    const name = words.targetName({ kind: 'feature', id: feature.id }, site);
    return [{ at, level: levelOf(feature), text: description(name) }];
  });
  return [...marks, ...setOut, ...yard];
}

/** Of the ground or the top of a thing: inverts lie below it and are not its level. */
function levelOf({ kind, fields }: DerivedFeature['feature']): number | null {
  if (kind === 'benchmark' || kind === 'spot-level') return fields.level ?? null;
  return kind === 'manhole' ? (fields.rimLevel ?? null) : null;
}

/** On one line, without commas and quotes, which nothing escapes here, and no formula. */
function description(text: string): string {
  return plainText(text)
    .replace(/[\s,"]+/gu, ' ')
    .replace(/^[=+\-@#＝＋－＠ ]+/, '')
    .trim();
}
