import { drawProfile, type ProfileDrawing, services, stationText } from '@footmark/drawing';
import { FOOT_M, invertAt, type PathProfile, type ProfileCrossing, profileCrossings } from '@footmark/site';
import type { Piece } from '../flow/section';
import { GAP, LINE, SIZE } from '../page/measures';
import type { Box, Item } from '../page/page';
import { penOf, tintOf } from '../plan/paintPrimitives';
import type { SheetSetting } from '../setting';
import { textBlock, textLine } from '../text/textBlock';
import { type ProfileScale, profileScale } from './profileScale';
import { type ProfileTag, profileTags } from './profileTags';

const HEIGHT_MM = 64;
/** Heights at the left, what is said and marks above, stations below, mm. */
const MARGIN = { left: 13, right: 5, top: 19, bottom: 5 } as const;
/** Share of what is shown left bare above and below. */
const AIR = 0.06;
const TAG = { rows: 3, height: 3.4, air: 1.2 } as const;
const PIN_MM = 0.8;
const LEAST_RADIUS_MM = 0.8;

/** A pipe in elevation with its ground, marks and crossings; null where nothing is known of its depth. */
export function profileStrip(path: string, width: number, setting: SheetSetting): Piece | null {
  const { derived, site, words, inks } = setting;
  const profile = derived.profiles.get(path);
  if (profile === undefined) return null;
  const drawing = drawProfile(profile);
  if (drawing.heights === null || profile.points.length === 0) return null;
  const crossings = profileCrossings(profile, derived).filter((c) => c.top !== null);
  const edges = crossings.flatMap((c) => [c.top ?? 0, (c.top ?? 0) - c.diameter]);
  const [low, high] = [Math.min(drawing.heights.low, ...edges), Math.max(drawing.heights.high, ...edges)];
  const air = AIR * (high - low);
  return {
    height: HEIGHT_MM,
    paint: ({ x, y }) => {
      const box: Box = {
        x: x + MARGIN.left,
        y: y + MARGIN.top,
        width: width - MARGIN.left - MARGIN.right,
        height: HEIGHT_MM - MARGIN.top - MARGIN.bottom,
      };
      const scale = profileScale({
        length: profile.length,
        low: low - air,
        high: high + air,
        left: box.x,
        top: box.y,
        width: box.width,
        height: box.height,
        unit: site.units.length === 'm' ? 1 : FOOT_M,
      });
      const said = `${words.targetName({ kind: 'path', id: path }, site)}. ${words.sheet.exaggerationText(scale.exaggeration)} ${words.profileHeightsText(profile)}`;
      return [
        ...textBlock(
          said,
          { size: SIZE.small, weight: 'regular', colour: inks.ink, mostLines: 2 },
          width,
          setting,
        ).paint({ x, y }),
        ...rulingItems(profile, scale, box, setting),
        {
          is: 'window',
          box: { ...box, width: box.width + MARGIN.right },
          items: [...lineItems(drawing, scale, setting), ...crossingItems(crossings, scale, setting)],
        },
        ...tagItems(profileTags(profile, setting), profile, scale, box, setting),
      ];
    },
  };
}

/** Heights and stations, ruled through. */
function rulingItems(
  profile: PathProfile,
  scale: ProfileScale,
  box: Box,
  setting: SheetSetting,
): readonly Item[] {
  const { inks, site } = setting;
  const [left, right, bottom] = [scale.x(0), scale.x(profile.length), box.y + box.height];
  const below = profile.heights === 'below-ground';
  const fine = { size: SIZE.fine, weight: 'regular', colour: inks.assumed } as const;
  const grid = { colour: inks.faint, width: LINE.hair, opacity: 0.6 };
  const line = (a: number, b: number, c: number, d: number) => [
    { x: a, y: b },
    { x: c, y: d },
  ];
  const unit = site.units.length === 'm' ? 'm' : 'ft';
  return [
    {
      is: 'lines',
      lines: [
        ...scale.heights.map(({ height }) => line(left, scale.y(height), right, scale.y(height))),
        ...scale.stations.map((s) => line(scale.x(s), box.y, scale.x(s), bottom)),
      ],
      closed: false,
      pen: grid,
    },
    {
      is: 'lines',
      lines: [line(left, bottom, right, bottom)],
      closed: false,
      pen: { colour: inks.ink, width: LINE.fine },
    },
    ...scale.heights.map(({ height, text }, i) =>
      textLine(
        `${below ? text.replace(/^[−-]/, '') : text}${i === scale.heights.length - 1 ? ` ${unit}` : ''}`,
        { x: left - 1.2, y: scale.y(height) + SIZE.fine * 0.35 },
        { ...fine, width: MARGIN.left - 1.4, anchor: 'end' },
        setting,
      ),
    ),
    ...scale.stations.map((s) =>
      textLine(
        stationText(s, site.units),
        { x: scale.x(s), y: bottom + 3.2 },
        { ...fine, width: 14, anchor: s <= 0 ? 'start' : 'middle' },
        setting,
      ),
    ),
  ];
}

function lineItems({ lines }: ProfileDrawing, scale: ProfileScale, { inks }: SheetSetting): readonly Item[] {
  return lines.map(({ points, closed, stroke, fill }) => ({
    is: 'lines',
    lines: [points.map((p) => ({ x: scale.x(p.x), y: scale.y(p.y) }))],
    closed,
    ...(stroke === undefined ? {} : { pen: penOf(stroke, inks) }),
    ...(fill === undefined ? {} : { tint: tintOf(fill, inks) }),
  }));
}

/** Services and mains that cross, cut through, with the letters of their line on the plan. */
function crossingItems(
  crossings: readonly ProfileCrossing[],
  scale: ProfileScale,
  setting: SheetSetting,
): readonly Item[] {
  const { site, inks } = setting;
  return crossings.flatMap(({ feature, station, top, diameter }): readonly Item[] => {
    const crossed = site.features.find((f) => f.id === feature);
    if (top === null || crossed === undefined) return [];
    const carried = crossed.kind === 'service' ? crossed.fields.carries : undefined;
    const known = carried === undefined ? null : services[carried];
    const colour = inks[crossed.kind === 'service' ? (known?.ink ?? 'ink') : 'sewer'];
    const radius = Math.max(LEAST_RADIUS_MM, (scale.y(top - diameter) - scale.y(top)) / 2);
    const centre = { x: scale.x(station), y: scale.y(top) + radius };
    return [
      {
        is: 'circle',
        centre,
        radius,
        pen: { colour, width: LINE.frame },
        tint: { colour: inks.paper },
      },
      textLine(
        crossed.kind === 'service' ? (known?.letters ?? '?') : 'SS',
        { x: centre.x + radius + 0.8, y: centre.y + SIZE.fine * 0.35 },
        { size: SIZE.fine, weight: 'bold', colour, width: 12 },
        setting,
      ),
    ];
  });
}

/** A ring on the pipe at each painted point, and what is painted above the strip. */
function tagItems(
  tags: readonly ProfileTag[],
  profile: PathProfile,
  scale: ProfileScale,
  box: Box,
  { inks, lettering }: SheetSetting,
): readonly Item[] {
  const taken: { row: number; from: number; to: number }[] = [];
  return tags.flatMap(({ station, label, ink }): readonly Item[] => {
    const colour = inks[ink];
    const x = scale.x(station);
    const half = lettering.widthOf(label, SIZE.small, 'bold') / 2 + TAG.air / 2;
    const row = Array.from({ length: TAG.rows }, (_, i) => i).find(
      (r) => !taken.some((t) => t.row === r && t.from < x + half && t.to > x - half),
    );
    if (row !== undefined) taken.push({ row, from: x - half, to: x + half });
    const pipe = invertAt(profile.line, station);
    const base = box.y - GAP.small - (row ?? 0) * TAG.height;
    const y = pipe === null ? null : scale.y(pipe.invert);
    const above = row === undefined ? null : base + GAP.hair;
    const text: Item = {
      is: 'text',
      at: { x, y: base },
      text: label,
      size: SIZE.small,
      weight: 'bold',
      colour,
      anchor: 'middle',
      turn: 0,
    };
    return [
      ...(y === null ? [] : pinOf(x, y, above, colour, inks.paper)),
      ...(row === undefined ? [] : [text]),
    ];
  });
}

/** A ring on the pipe, and a line up to its text where that has one. */
function pinOf(x: number, y: number, above: number | null, colour: string, paper: string): readonly Item[] {
  const line = [
    { x, y: above ?? y },
    { x, y },
  ];
  return [
    { is: 'lines', lines: [line], closed: false, pen: { colour, width: LINE.hair, dash: [0.8, 0.8] } },
    {
      is: 'circle',
      centre: { x, y },
      radius: PIN_MM,
      pen: { colour, width: LINE.medium },
      tint: { colour: paper },
    },
  ];
}
