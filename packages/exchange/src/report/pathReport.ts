import { type DerivedPath, formatDiameter, formatSlope, type Stretch } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';

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
    slope: roundedAngle(slope),
    display: {
      from: lengthText(from, site.units),
      to: lengthText(to, site.units),
      material: words.materialName(material),
      diameter: formatDiameter(diameter, site.units.diameter),
      slope: formatSlope(slope, site.units.length === 'm' ? 'percent' : 'in/ft'),
    },
  };
}
