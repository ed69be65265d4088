import { type DerivedPath, formatDiameter, formatSlope, type Stretch } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedLength } from './rounding';
import { type StationRange, unseenStretches } from './unseenStretches';

/** A path: its length in plan and as the cable lies, what it is made of, and where it joins. */
export function pathReport(
  { path, points, measured, length, profile, joins }: DerivedPath,
  setting: ReportSetting,
) {
  const { site, words } = setting;
  return {
    id: path.id,
    name: words.targetName({ kind: 'path', id: path.id }, site),
    state: path.state,
    length: roundedLength(length),
    developedLength: roundedLength(profile.total),
    display: {
      state: words.pathStateName(path.state),
      length: lengthText(length, site.units),
      developedLength: lengthText(profile.total, site.units),
    },
    vertices: points.map((at, i) => ({
      id: path.vertices[i]?.id ?? '',
      x: roundedLength(at.x),
      y: roundedLength(at.y),
      measured: measured[i] ?? false,
    })),
    stretches: path.stretches.map((stretch, i) =>
      stretchReport(stretch, path.stretches[i + 1]?.from ?? length, setting),
    ),
    joins: joins === null ? null : { ...joins, station: roundedLength(joins.station) },
  };
}

function stretchReport(
  { from, material, diameter, slope }: Stretch,
  to: number,
  { site, words }: ReportSetting,
) {
  return {
    from: roundedLength(from),
    to: roundedLength(to),
    material,
    diameter: roundedLength(diameter),
    slope,
    display: {
      from: lengthText(from, site.units),
      to: lengthText(to, site.units),
      material: words.materialName(material),
      diameter: formatDiameter(diameter, site.units.diameter),
      slope: formatSlope(slope, site.units.length === 'm' ? 'percent' : 'in/ft'),
    },
  };
}

/** What the cameras have seen of a path, run by run, and what none of them has. */
export function coverageReport({ path, length }: DerivedPath, setting: ReportSetting) {
  const { derived } = setting;
  const seen = derived.coverage.filter((stretch) => stretch.path === path.id);
  const unseen = unseenStretches(length, seen);
  return {
    path: path.id,
    seen: seen.map((stretch) => ({ run: stretch.run, ...rangeReport(stretch, setting) })),
    unseen: unseen.map((gap) => rangeReport(gap, setting)),
  };
}

function rangeReport({ from, to }: StationRange, { site }: ReportSetting) {
  return {
    from: roundedLength(from),
    to: roundedLength(to),
    display: { from: lengthText(from, site.units), to: lengthText(to, site.units) },
  };
}
