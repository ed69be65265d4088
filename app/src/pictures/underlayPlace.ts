import { applySimilarity, fitSimilarity, type Point } from '@footmark/geometry';
import { type Derived, refKey, type Underlay } from '@footmark/site';
import type { PicturePlace } from './picturePlace';

/** Where a picture lies; null when its fit leads nowhere. */
export function placeOfUnderlay(derived: Derived, { fit, widthPx, heightPx }: Underlay): PicturePlace | null {
  const up = (p: Point) => ({ x: p.x, y: -p.y });
  switch (fit.by) {
    case 'finger': {
      const right = {
        x: fit.metresPerPixel * Math.cos(fit.upAzimuth),
        y: -fit.metresPerPixel * Math.sin(fit.upAzimuth),
      };
      const [w, h] = [widthPx / 2, heightPx / 2];
      return {
        right,
        corner: {
          x: fit.middle.x - w * right.x - h * right.y,
          y: fit.middle.y - w * right.y + h * right.x,
        },
      };
    }
    case 'span': {
      const to = {
        x: fit.at.x + fit.distance * Math.sin(fit.azimuth),
        y: fit.at.y + fit.distance * Math.cos(fit.azimuth),
      };
      const found = fitSimilarity([
        { from: up(fit.from), to: fit.at },
        { from: up(fit.to), to },
      ]);
      if (!found.ok) return null;
      const { a, b, tx, ty } = found.value.transform;
      return { corner: { x: tx, y: ty }, right: { x: a, y: b } };
    }
    case 'pairs': {
      const pairs = fit.pairs.flatMap((pair) => {
        const to = pair.to.is === 'place' ? pair.to.at : derived.points.get(refKey(pair.to.point))?.at;
        return to === undefined ? [] : [{ from: up(pair.pixel), to }];
      });
      const found = fitSimilarity(pairs);
      if (!found.ok) return null;
      const { a, b, tx, ty } = found.value.transform;
      return { corner: { x: tx, y: ty }, right: { x: a, y: b } };
    }
  }
}
void applySimilarity;
