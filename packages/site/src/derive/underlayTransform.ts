import {
  applySimilarity,
  distance,
  fitSimilarity,
  invertSimilarity,
  type Point,
  pointAtAzimuth,
  type Similarity,
} from '@footmark/geometry';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Pixel, Underlay } from '../document/underlay';
import { type Finding, finding } from './finding';
import type { ResolvedPoint } from './resolvePoints';

/** How a picture lies in the plan. Pixels count right and down from its top left corner. */
export type DerivedUnderlay = {
  /** X = a·x + b·y + tx, Y = b·x − a·y + ty: a similarity of pixels counted down into the plan, which counts up. */
  readonly toPlan: Similarity;
  readonly metresPerPixel: number;
  /** For a fit by pairs: plan metres from where the pair says to where the fit puts the pixel, in the order of the pairs. */
  readonly residuals: readonly Point[];
  /** For three and more pairs: standard deviation (m) of a coordinate that the fit leaves. */
  readonly sigma: number | null;
};

export type UnderlayProblem = 'underlay-span-is-nothing' | 'underlay-pairs-coincide';

export type UnderlayFitted =
  | { readonly ok: true; readonly value: DerivedUnderlay }
  | { readonly ok: false; readonly code: UnderlayProblem };

/** A pair counts as one that contradicts the others from this many times what they leave by themselves. */
const OUTLIER_FACTOR = 4;

/** Metres: below this a pair is as good as a hand can point. */
const OUTLIER_LEAST_M = 0.1;

/** Fits a picture to the plan. `points` are the places of the site's points, by `of/at`; a pair with one that has none is left out. */
export function underlayTransform(
  { fit, widthPx, heightPx }: Pick<Underlay, 'fit' | 'widthPx' | 'heightPx'>,
  points: ReadonlyMap<string, { readonly at: Point }>,
): UnderlayFitted {
  switch (fit.by) {
    case 'finger': {
      const [a, b] = [
        fit.metresPerPixel * Math.cos(fit.upAzimuth),
        -fit.metresPerPixel * Math.sin(fit.upAzimuth),
      ];
      const middle = applySimilarity({ a, b, tx: 0, ty: 0 }, upright({ x: widthPx / 2, y: heightPx / 2 }));
      return fitted({ a, b, tx: fit.middle.x - middle.x, ty: fit.middle.y - middle.y }, [], null);
    }
    case 'span': {
      const found = fitSimilarity([
        { from: upright(fit.from), to: fit.at },
        { from: upright(fit.to), to: pointAtAzimuth(fit.at, fit.azimuth, fit.distance) },
      ]);
      return found.ok
        ? fitted(found.value.transform, [], null)
        : { ok: false, code: 'underlay-span-is-nothing' };
    }
    case 'pairs': {
      const pairs = fit.pairs.flatMap(({ pixel, to }) => {
        const place = to.is === 'place' ? to.at : points.get(refKey(to.point))?.at;
        return place === undefined ? [] : [{ from: upright(pixel), to: place }];
      });
      const found = fitSimilarity(pairs);
      return found.ok
        ? fitted(found.value.transform, found.value.residuals, found.value.s0)
        : { ok: false, code: 'underlay-pairs-coincide' };
    }
  }
}

function fitted(toPlan: Similarity, residuals: readonly Point[], sigma: number | null): UnderlayFitted {
  return { ok: true, value: { toPlan, metresPerPixel: Math.hypot(toPlan.a, toPlan.b), residuals, sigma } };
}

/** The place in the plan of a pixel. */
export function pixelToPlan({ toPlan }: Pick<DerivedUnderlay, 'toPlan'>, pixel: Pixel): Point {
  return applySimilarity(toPlan, upright(pixel));
}

/** The pixel that shows a place in the plan, also outside of the picture. */
export function planToPixel({ toPlan }: Pick<DerivedUnderlay, 'toPlan'>, p: Point): Pixel {
  const { x, y } = applySimilarity(invertSimilarity(toPlan), p);
  return { x, y: -y };
}

/** Fits every picture of a site; one that cannot be fitted is left out and a finding says why. */
export function deriveUnderlays(
  site: Site,
  points: ReadonlyMap<string, ResolvedPoint>,
  findings: Finding[],
): ReadonlyMap<string, DerivedUnderlay> {
  const underlays = new Map<string, DerivedUnderlay>();
  for (const underlay of site.underlays) {
    const name = underlay.name === '' ? underlay.id : underlay.name;
    const found = underlayTransform(underlay, points);
    if (!found.ok) {
      findings.push(finding(found.code, 'error', { kind: 'site' }, { underlay: name }));
      continue;
    }
    underlays.set(underlay.id, found.value);
    const worst = outlierOf(underlay, points, found.value);
    if (worst !== null) {
      findings.push(
        finding('underlay-pair-disagrees', 'warning', { kind: 'site' }, { underlay: name, ...worst }),
      );
    }
  }
  return underlays;
}

/**
 * The pair without which the others agree far better (four pairs and more: three without it still leave residuals). `by` is how far off
 * it lies from where the others put it.
 */
function outlierOf(
  underlay: Underlay,
  points: ReadonlyMap<string, ResolvedPoint>,
  { residuals }: DerivedUnderlay,
): { pair: number; by: number } | null {
  const { fit } = underlay;
  if (fit.by !== 'pairs' || residuals.length < 4 || residuals.length < fit.pairs.length) return null;
  let worst = 0;
  for (const [i, v] of residuals.entries()) {
    const most = residuals[worst] ?? v;
    if (Math.hypot(v.x, v.y) > Math.hypot(most.x, most.y)) worst = i;
  }
  const without = underlayTransform(
    { ...underlay, fit: { ...fit, pairs: fit.pairs.toSpliced(worst, 1) } },
    points,
  );
  const pair = fit.pairs[worst];
  if (!without.ok || pair === undefined) return null;
  const given = pair.to.is === 'place' ? pair.to.at : points.get(refKey(pair.to.point))?.at;
  if (given === undefined) return null;
  const by = distance(pixelToPlan(without.value, pair.pixel), given);
  return by > Math.max(OUTLIER_LEAST_M, OUTLIER_FACTOR * (without.value.sigma ?? 0))
    ? { pair: worst + 1, by }
    : null;
}

/** A pixel with y counted up. */
function upright({ x, y }: Pixel): Point {
  return { x, y: -y };
}
