import { standsInTheWay } from '@footmark/dig';
import {
  type Derived,
  type Finding,
  type ReferencePoint,
  type RunsFit,
  type Site,
  setOutsOf,
} from '@footmark/site';
import { lengthText, type Words } from '@footmark/words';
import { coverageReport } from './coverageReport';
import { digReport } from './digReport';
import { fitReport } from './fitReport';
import { accuracyReport, locateReport } from './locateReport';
import { markReport } from './markReport';
import { pairReport, suggestionReport } from './pairReport';
import { pathReport } from './pathReport';
import type { ReportSetting } from './reportSetting';
import { roundedLength, roundedValues } from './rounding';
import { setOutReport } from './setOutReport';

/** Raised by one when a key of the report goes away or changes its meaning. */
const REPORT_VERSION = 1;

/**
 * All that follows from a site as one plain JSON value, in an order that depends on the site alone. `today` is an ISO day, which the one-call ticket is held against. Numbers are metres and
 * radians in the site frame (to a micrometre and a nanoradian); `display` beside them is the text that people see. The README
 * has the keys.
 */
export function derivedReport(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  words: Words,
  today: string,
) {
  const setting: ReportSetting = { site, derived, fit, words };
  const paths = [...derived.paths.values()];
  return {
    report: 'footmark-report',
    version: REPORT_VERSION,
    language: words.language,
    site: siteReport(site),
    marks: derived.marks.map((mark) => markReport(mark, setting)),
    paths: paths.map((path) => pathReport(path, setting)),
    setOut: setOutsOf(site, derived).map((setOut) => setOutReport(setOut, setting)),
    coverage: [...derived.lookedAt].map(([path, stretches]) => coverageReport(path, stretches, setting)),
    locates: derived.locates.map((locate) => locateReport(locate, setting)),
    fit: fit === null ? null : fitReport(fit),
    accuracy: derived.accuracy === null ? null : accuracyReport(derived.accuracy, setting),
    pairs: derived.pairs.map((pair) => pairReport(pair, setting)),
    pairSuggestions: derived.pairSuggestions.map((suggestion) => suggestionReport(suggestion, setting)),
    inTheWay: digReport(standsInTheWay(site, derived, fit, today), setting),
    references: derived.references.map((reference) => referenceReport(reference, setting)),
    findings: derived.findings.map((finding) => findingReport(finding, setting)),
  };
}

/** The report as a type, for programs that read it. */
export type DerivedReport = ReturnType<typeof derivedReport>;

function siteReport(site: Site) {
  return {
    id: site.id,
    name: site.name,
    address: site.address,
    note: site.note,
    createdAt: site.createdAt,
    units: site.units,
    frame: site.frame,
    tape: { length: roundedLength(site.tape.length), sigma: roundedLength(site.tape.sigma) },
    entryReach: roundedLength(site.entryReach),
    features: site.features.length,
    paths: site.paths.length,
    runs: site.runs.length,
    display: {
      tapeLength: lengthText(site.tape.length, site.units),
      entryReach: lengthText(site.entryReach, site.units),
    },
  };
}

function referenceReport(reference: ReferencePoint, { site, words }: ReportSetting) {
  return {
    ...reference.ref,
    name: words.referenceName(reference, site),
    x: roundedLength(reference.at.x),
    y: roundedLength(reference.at.y),
    measured: reference.measured,
    display: {
      x: lengthText(reference.at.x, site.units),
      y: lengthText(reference.at.y, site.units),
    },
  };
}

function findingReport(finding: Finding, { site, words }: ReportSetting) {
  const { code, severity, at, values } = finding;
  return {
    code,
    severity,
    at,
    name: words.targetName(at, site),
    values: roundedValues(values),
    ...words.findingText(finding, site),
  };
}
