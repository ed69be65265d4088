import { earthToGrid, type Grid } from '@footmark/grid';
import {
  type Derived,
  formatClock,
  type Mark,
  type MarkPlace,
  markState,
  planToEarth,
  type Reading,
  type RunsFit,
  type Site,
} from '@footmark/site';
import type { Words } from '@footmark/words';
import { type CsvCell, csvText } from './csvText';
import { amount, type TableUnit, tableAmount, tableUnit, tiesCells, tiesHeader } from './tableCells';
import { mapDegrees } from './things/onEarth';

/**
 * All marks as a table, one row each in the order of runs and readings; a mark without a place has its place's cells empty.
 * The header names the unit of each length, `station_ft` or `station_m`. x is east and y north in the site frame. The hole is the one that
 * finds the mark at 95 %, along the pipe and across it; empty without a fit. Latitude and longitude (WGS 84) are empty while the site is nowhere on
 * the earth; with a `grid` there are eastings and northings in it too, and the system's name.
 */
export function marksCsv(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  words: Words,
  grid: Grid | null = null,
): string {
  const unit = tableUnit(site);
  const rows = derived.marks.map((mark) => markRow(mark, { site, derived, fit, words, unit, grid }));
  return csvText([header(unit.name, grid), ...rows]);
}

function header(unit: string, grid: Grid | null): readonly string[] {
  return [
    ...['mark', 'run', `reading_${unit}`, 'unit', 'seen', 'clock', 'passed'],
    ...['path', `station_${unit}`, `x_${unit}`, `y_${unit}`],
    ...tiesHeader(unit),
    ...['state', `hole_length_${unit}`, `hole_width_${unit}`],
    ...['nearest_trunk', `trunk_clearance_${unit}`, `boundary_clearance_${unit}`, 'note'],
    ...['latitude', 'longitude'],
    ...(grid === null ? [] : gridHeader(grid)),
  ];
}

/** `easting_us_ft`: which foot it is stands in the name. */
function gridHeader({ system }: Grid): readonly string[] {
  const unit = system.unit.name.replace('-', '_');
  return [`easting_${unit}`, `northing_${unit}`, 'grid'];
}

type Setting = {
  readonly site: Site;
  readonly derived: Derived;
  readonly fit: RunsFit | null;
  readonly words: Words;
  readonly unit: TableUnit;
  readonly grid: Grid | null;
};

function markRow(mark: Mark, setting: Setting): readonly CsvCell[] {
  const { words, unit } = setting;
  const { run, reading, label } = mark;
  return [
    label,
    run.name === '' ? run.letter : `${run.letter} ${run.name}`,
    amount(reading.counter, unit),
    unit.name,
    words.observationName(reading.seen),
    clockText(reading),
    words.yesNo(reading.passed),
    ...placeCells(mark, setting),
    reading.note,
    ...earthCells(mark.place, setting),
  ];
}

function earthCells(place: MarkPlace | null, { derived, words, grid }: Setting): readonly CsvCell[] {
  const { toEarth } = derived.frame;
  const earth = toEarth === null || place === null ? null : planToEarth(toEarth, place.at);
  const degrees = earth?.ok ? earth.value : null;
  const cells = [
    degrees === null ? null : mapDegrees(degrees.latitudeDeg),
    degrees === null ? null : mapDegrees(degrees.longitudeDeg),
  ];
  if (grid === null) return cells;
  const at = degrees === null ? null : earthToGrid(grid, degrees);
  return [
    ...cells,
    at?.ok ? tableAmount(at.value.easting) : null,
    at?.ok ? tableAmount(at.value.northing) : null,
    words.gridSystemText(grid.system),
  ];
}

const EMPTY_PLACE: readonly CsvCell[] = Array.from({ length: 18 }, () => null);

function placeCells(mark: Mark, setting: Setting): readonly CsvCell[] {
  const { site, derived, fit, words, unit } = setting;
  const place: MarkPlace | null = mark.place;
  if (place === null) return EMPTY_PLACE;
  const hole = fit?.marks.get(mark.reading.id)?.zone.hole;
  const { ties, clearances } = place;
  const trunk = clearances.find((c) => c.kind === 'tree');
  const boundary = clearances.find((c) => c.kind === 'boundary' || c.kind === 'boundary-line');
  return [
    words.targetName({ kind: 'path', id: place.path }, site),
    amount(place.station, unit),
    amount(place.at.x, unit),
    amount(place.at.y, unit),
    ...tiesCells(ties, setting),
    words.markStateName(markState(mark, derived.locates)),
    hole === undefined ? null : amount(hole.length, unit),
    hole === undefined ? null : amount(hole.width, unit),
    trunk === undefined ? null : words.clearanceName(trunk, site),
    trunk === undefined ? null : amount(trunk.distance, unit),
    boundary === undefined ? null : amount(boundary.distance, unit),
  ];
}

function clockText({ clock }: Reading): string {
  return clock === undefined ? '' : formatClock(clock, { plain: true });
}
