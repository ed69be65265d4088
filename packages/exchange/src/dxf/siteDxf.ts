import { type Drawing, labelObstacles, type MeasureText, placeLabels } from '@footmark/drawing';
import { fail, ok, type Point, type Result } from '@footmark/geometry';
import { type Derived, type Site, setOutsOf } from '@footmark/site';
import type { Words } from '@footmark/words';
import { type Coordinates, fileFrame } from '../things/coordinates';
import type { EarthProblem } from '../things/onEarth';
import { dxfSection, dxfText } from './dxfPairs';
import { type DxfPen, dxfPen } from './dxfPen';
import { type DxfFrame, drawPrimitive } from './dxfPrimitives';
import { dxfString } from './dxfString';
import { dxfHeader, dxfTables } from './dxfTables';

export type DxfOptions = {
  readonly coordinates: Coordinates;
  /** Symbols, dashes and lettering have the size that they have on paper at 1 : this. */
  readonly scaleDenominator: number;
};

/** Width of a letter of the stroke font that CAD has for `txt`, to its height (common practice, no source). */
const LETTER_WIDTH = 0.9;

/**
 * The plan as a DXF file of release 12 (AC1009): lines, circles, texts and points on the drawing's layers, in true units; where they lie, in
 * the site frame or in a grid, and which unit it is, stands in comments at its top and in $INSUNITS. Marks, things that are points and set-out
 * places of the plan are POINT entities as well.
 */
export function siteDxf(
  site: Site,
  derived: Derived,
  drawing: Drawing,
  words: Words,
  { coordinates, scaleDenominator }: DxfOptions,
): Result<string, EarthProblem> {
  const file = fileFrame(site, derived, coordinates);
  if (!file.ok) return file;
  const { unit } = file.value;
  const middle = middleOf(drawing);
  const lost: EarthProblem[] = [];
  const frame = dxfFrame(file.value.place, middle, scaleDenominator, lost);
  if (!frame.ok) return frame;

  const pen = dxfPen();
  for (const { name, primitives } of drawing.layers) {
    for (const primitive of primitives) drawPrimitive(primitive, layerName(name), pen, frame.value);
  }
  drawLabels(drawing, pen, frame.value);
  drawPoints(site, derived, pen, frame.value);
  const [problem] = lost;
  if (problem !== undefined) return fail(problem);

  const comments = [
    site.name,
    words.fileUnitText(unit),
    coordinates.is === 'site' ? words.fileFrameText(null) : words.fileFrameText(coordinates.grid.system),
    words.cautionText('not-a-utility-locate').text,
  ];
  const unitsPerMm = frame.value.length(1 / frame.value.mmPerMetre);
  return ok(
    dxfText([
      ...comments.flatMap(wrapped).map((text) => [999, dxfString(text)] as const),
      ...dxfHeader(unit, pen.least, pen.most),
      ...dxfTables(
        drawing.layers.map(({ name }) => layerName(name)),
        pen.lineTypes,
        unitsPerMm,
      ),
      ...dxfSection('BLOCKS', []),
      ...dxfSection('ENTITIES', pen.entities),
      [0, 'EOF'],
    ]),
  );
}

const COMMENT_CHARACTERS = 110;

/** A long comment as several lines, cut between words. */
function wrapped(text: string): readonly string[] {
  return text.match(new RegExp(`.{1,${COMMENT_CHARACTERS}}(?:\\s|$)`, 'gs')) ?? [];
}

/** R12 takes capitals, digits, $, - and _. */
function layerName(name: string): string {
  return name.toUpperCase();
}

function middleOf({ bounds }: Drawing): Point {
  return bounds === null
    ? { x: 0, y: 0 }
    : { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
}

/** A probe (m) to both sides of the middle tells how the plan is turned and scaled in the file. */
const PROBE_M = 10;

/**
 * The way into the file. Its scale and turn are those at the middle of the site; over a yard they are the same everywhere. A place that has none in the
 * file is told in `lost`.
 */
function dxfFrame(
  place: (p: Point) => Result<Point, EarthProblem>,
  middle: Point,
  scaleDenominator: number,
  lost: EarthProblem[],
): Result<DxfFrame, EarthProblem> {
  const from = place({ x: middle.x - PROBE_M, y: middle.y });
  const to = place({ x: middle.x + PROBE_M, y: middle.y });
  if (!from.ok) return from;
  if (!to.ok) return to;
  const [dx, dy] = [to.value.x - from.value.x, to.value.y - from.value.y];
  const scale = Math.hypot(dx, dy) / (2 * PROBE_M);
  return ok({
    mmPerMetre: 1000 / scaleDenominator,
    turn: Math.atan2(dy, dx),
    length: (metres) => metres * scale,
    place: (p) => {
      const at = place(p);
      if (at.ok) return at.value;
      lost.push(at.code);
      return from.value;
    },
  });
}

function drawLabels(drawing: Drawing, pen: DxfPen, frame: DxfFrame): void {
  const { mmPerMetre } = frame;
  const measureText: MeasureText = (text, heightMm) => text.length * heightMm * LETTER_WIDTH;
  const { layers } = drawing;
  const layerOf = new Map(
    layers.flatMap(({ name, labels }) => labels.map(({ id }) => [id, layerName(name)])),
  );
  const obstacles = labelObstacles(drawing, mmPerMetre);
  const labels = layers.flatMap((layer) => layer.labels);
  for (const { label, text, at, azimuth, leader } of placeLabels(labels, obstacles, {
    mmPerMetre,
    measureText,
  })) {
    const penOf = { layer: layerOf.get(label.id) ?? '0', stroke: { ink: label.ink } };
    if (leader !== undefined) pen.line(leader.map(frame.place), false, penOf);
    const height = frame.length(label.height / mmPerMetre);
    pen.text(text, frame.place(at), height, Math.PI / 2 - azimuth + frame.turn, penOf);
  }
}

function drawPoints(site: Site, derived: Derived, pen: DxfPen, frame: DxfFrame): void {
  for (const { place } of derived.marks) if (place !== null) pen.point(frame.place(place.at), 'MARKS');
  for (const { points } of setOutsOf(site, derived))
    for (const { at } of points) pen.point(frame.place(at), 'MARKS');
  for (const { spec, points } of derived.features.values()) {
    const [at] = points;
    if (spec.shape === 'point' && at !== undefined) pen.point(frame.place(at), layerName(spec.layer));
  }
}
