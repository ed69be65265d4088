import type { Area } from '../request';
import { type Ray, rayInShape } from './rayInShape';
import { lengthUpTo, type Span } from './spans';

/** Where a ray runs in ground that costs; none of which it misses. */
export type AreaSpans = readonly { readonly perMetre: number; readonly spans: readonly Span[] }[];

export function areasAlong(areas: readonly Area[], ray: Ray): AreaSpans {
  return areas.flatMap(({ shape, perMetre }) => {
    const spans = rayInShape(ray, shape, 0);
    return spans.length === 0 ? [] : [{ perMetre, spans }];
  });
}

/** What the first `to` metres of a ray cost beyond their length. */
export function costAhead(areas: AreaSpans, to: number): number {
  let cost = 0;
  for (const { perMetre, spans } of areas) cost += perMetre * lengthUpTo(spans, to);
  return cost;
}

/** What the `length` metres of its line before its start do. */
export function costBehind(areas: AreaSpans, length: number): number {
  let cost = 0;
  for (const { perMetre, spans } of areas) {
    const turned = spans.map(([a, b]): Span => [-b, -a]);
    cost += perMetre * lengthUpTo(turned, length);
  }
  return cost;
}
