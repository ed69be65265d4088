import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { legOf, strayPerMetre } from '../stray';
import { LEAST_SIGMA_M, type Tagged } from '../tagged';

/** The strays of a leg as a walk of independent steps from its one end to the other. */
export function* strayGuesses({ site, derived, strays }: Net): Generator<Tagged> {
  const perMetre = strayPerMetre(sigmaOf(site, 'pipeStray'));
  for (const [i, stray] of strays.entries()) {
    const on = derived.paths.get(stray.path);
    const leg = on === undefined ? null : legOf(on, stray.leg);
    const end = on?.path.vertices[stray.leg + 1]?.id;
    if (leg === null || end === undefined) continue;
    const sameLeg = (other: (typeof strays)[number] | undefined) =>
      other?.path === stray.path && other.leg === stray.leg ? other : undefined;
    const [before, after] = [sameLeg(strays[i - 1]), sameLeg(strays[i + 1])];
    const piece = (number: number, metres: number, plus: number, minus: number | undefined): Tagged => ({
      tag: { is: 'stray', path: stray.path, vertex: end, piece: number },
      observation: {
        kind: 'custom',
        id: `stray/${stray.path}/${end}`,
        value: 0,
        sigma: Math.max(LEAST_SIGMA_M, Math.sqrt(perMetre * metres)),
        evaluate: (x) => (x[plus] ?? 0) - (minus === undefined ? 0 : (x[minus] ?? 0)),
        gradient: (_, out) => {
          out.add(plus, 1);
          if (minus !== undefined) out.add(minus, -1);
        },
      },
    });
    yield piece(i, (stray.share - (before?.share ?? 0)) * leg.length, stray.unknown, before?.unknown);
    if (after === undefined) yield piece(i + 1, (1 - stray.share) * leg.length, stray.unknown, undefined);
  }
}
