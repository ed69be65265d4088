import type { AnyDigFinding } from '@footmark/dig';
import type { DigFindingValues as Values } from './digFindingValues';

/** What a language says of each finding, made of the finding's values and of how it speaks of things. */
export type DigFindingTable<Speech, Result> = {
  readonly [Code in keyof Values]: (values: Values[Code], speech: Speech) => Result;
};

/** What a table says of a finding. */
export function sayFinding<Speech, Result>(
  table: DigFindingTable<Speech, Result>,
  { code, values }: AnyDigFinding,
  speech: Speech,
): Result {
  const say = table[code] as (values: AnyDigFinding['values'], speech: Speech) => Result; // its own code's
  return say(values, speech);
}
