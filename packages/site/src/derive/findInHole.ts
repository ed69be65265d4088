import type { RunsFit, SearchZone } from '../fit/runsFit';
import type { Derived } from './derive';
import { type Finding, finding } from './finding';
import { targetOfFind } from './foundFindings';
import type { FoundPlace } from './foundPlaces';

/** Whether what was found lies in the 95 % zone of its mark, only in the hole about that, or outside of both. */
export type FindVerdict = 'in-zone' | 'in-hole' | 'outside';

/** Null for what was looked for at no mark, for one without a zone, and where it is not known where it was found. */
export function findInHole({ record: { about }, off, sought }: FoundPlace, fit: RunsFit): FindVerdict | null {
  if (about.is !== 'mark' || off === null || sought === null) return null;
  const zone = fit.marks.get(about.reading)?.zone;
  return zone === undefined ? null : verdict(zone, off, sought.flow);
}

function verdict(
  { semiMajor, semiMinor, azimuth, hole }: SearchZone,
  { along, across }: { readonly along: number; readonly across: number },
  flow: number,
): FindVerdict {
  const turn = azimuth - flow; // from the pipe to the longer axis, clockwise as `across` is to the right
  const u = along * Math.cos(turn) + across * Math.sin(turn);
  const v = across * Math.cos(turn) - along * Math.sin(turn);
  if ((u / semiMajor) ** 2 + (v / semiMinor) ** 2 <= 1) return 'in-zone';
  return Math.abs(along) <= hole.length / 2 && Math.abs(across) <= hole.width / 2 ? 'in-hole' : 'outside';
}

/** Of each find that lies outside of its hole: that it does, and how far off it is. */
export function findsOutside({ found }: Derived, fit: RunsFit): readonly Finding[] {
  return found.flatMap((one) =>
    one.off === null || findInHole(one, fit) !== 'outside'
      ? []
      : finding('as-found-outside', 'warning', targetOfFind(one), {
          label: one.label,
          by: one.record.by,
          along: one.off.along,
          across: one.off.across,
        }),
  );
}
