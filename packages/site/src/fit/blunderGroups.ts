import type { Solved } from '@footmark/adjust';
import { observationName } from './observationTag';
import type { BlunderGroup } from './runsFit';
import type { Tagged } from './tagged';

/**
 * What does not fit, most suspect first. The halves of a locate count as one thing, by the worse of them; a group that names nothing but
 * what an earlier one named is left out.
 */
export function blunderGroups(solved: Solved, list: readonly Tagged[]): readonly BlunderGroup[] {
  const named = new Set<string>();
  const groups: BlunderGroup[] = [];
  for (const group of solved.suspects()) {
    const members = new Map<string, BlunderGroup[number]>();
    for (const { index, standardizedResidual, blunder } of group) {
      const of = list[index];
      if (of === undefined) continue;
      const name = observationName(of.tag);
      if (members.has(name)) continue;
      const { value: observed } = of.observation;
      members.set(name, { tag: of.tag, name, standardized: standardizedResidual, blunder, observed });
    }
    if ([...members.keys()].every((name) => named.has(name))) continue;
    for (const name of members.keys()) named.add(name);
    groups.push([...members.values()]);
  }
  return groups;
}
