import type { Site } from '../document/site';
import type { Pair } from '../document/visit';
import { apartSigma } from './alongSigma';
import type { DerivedPath } from './derivePaths';
import { type Finding, finding } from './finding';
import type { Mark, MarkPlace } from './marks';
import { type PairExplanation, pairExplanations } from './pairExplanations';

/** How two runs agree about one thing that both saw. Plan metres along its path. */
export type PairAgreement = {
  readonly pair: Pair;
  readonly a: Mark;
  readonly b: Mark;
  readonly path: string;
  readonly stationA: number;
  readonly stationB: number;
  /** From where `a` has the thing to where `b` has it, with the flow. */
  readonly closure: number;
  /** Standard deviation of the closure that counters, zeros, scales and risers lead to expect, and a look from both sides. */
  readonly sigma: number;
  readonly explanations: readonly PairExplanation[];
};

type PairSetting = {
  readonly marks: readonly Mark[];
  readonly paths: ReadonlyMap<string, DerivedPath>;
};

/**
 * The site's pairs in their order. A pair of one run or on two paths says nothing, and a finding says so; one with a reading that has no
 * place is left out.
 */
export function agreementsOf(
  site: Site,
  { marks, paths }: PairSetting,
  findings: Finding[],
): readonly PairAgreement[] {
  if (site.pairs.length === 0) return [];
  const byReading = new Map(marks.map((mark) => [mark.reading.id, mark]));
  return site.pairs.flatMap((pair): PairAgreement[] => {
    const [a, b] = [byReading.get(pair.a.reading), byReading.get(pair.b.reading)];
    if (a === undefined || b === undefined) return [];
    const at = { kind: 'reading', run: a.run.id, id: a.reading.id } as const;
    if (a.run === b.run) {
      findings.push(finding('pair-of-one-run', 'warning', at, { a: a.label, b: b.label }));
      return [];
    }
    if (a.place === null || b.place === null) return [];
    const on = paths.get(a.place.path);
    if (on === undefined) return [];
    if (a.place.path !== b.place.path) {
      const name = (place: MarkPlace) => paths.get(place.path)?.path.name || place.path;
      const onPaths = { a: a.label, b: b.label, pathA: name(a.place), pathB: name(b.place) };
      findings.push(finding('pair-on-two-paths', 'warning', at, onPaths));
      return [];
    }
    const [stationA, stationB] = [a.place.station, b.place.station];
    return [
      {
        pair,
        a,
        b,
        path: a.place.path,
        stationA,
        stationB,
        closure: stationB - stationA,
        sigma: apartSigma(site, a, b) * planPerCable(on, (stationA + stationB) / 2),
        explanations: pairExplanations(a, b, on),
      },
    ];
  });
}

/** Plan metres for a metre of cable, on the slope at a station. */
function planPerCable({ path }: DerivedPath, station: number): number {
  return 1 / Math.hypot(1, path.stretches.findLast((s) => s.from <= station)?.slope ?? 0);
}
