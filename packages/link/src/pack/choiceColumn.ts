import { mix } from '../coder/bitModel';
import { codeChoice } from '../coder/symbols';
import type { Walk } from './walk';

/** Places in a list of `things` things, each expected after the two before it; `also` are more general contexts than the column's own. */
export function choiceColumn(
  { coder }: Walk,
  context: number,
  args: {
    readonly things: number;
    readonly count: number;
    readonly given: readonly number[] | null;
    readonly also?: readonly number[];
  },
): number[] {
  const found: number[] = [];
  let [before, beforeThat] = [0, 0];
  for (let i = 0; i < args.count && !coder.failed; i++) {
    const after = mix(context, before);
    const contexts = [...(args.also ?? []), context, after, mix(after, beforeThat)];
    const place = codeChoice(coder, contexts, args.things, args.given?.[i] ?? 0);
    found.push(place);
    [before, beforeThat] = [place + 1, before];
  }
  return found;
}

/** Yes or no, as `choiceColumn`. */
export function flagColumn(
  walk: Walk,
  context: number,
  count: number,
  given: readonly boolean[] | null,
  also?: readonly number[],
): boolean[] {
  const places = choiceColumn(walk, context, {
    things: 2,
    count,
    given: given?.map((flag) => (flag ? 1 : 0)) ?? null,
    ...(also === undefined ? {} : { also }),
  });
  return places.map((place) => place === 1);
}
