import type { Excavation } from '@footmark/dig';
import type { Units } from '@footmark/site';
import { words } from '../words';

/** A planned dig in a line: how wide and how long at the ground, how deep and how much ground it is, as far as that is known. */
export function digSizeText(excavation: Excavation | undefined, units: Units): string {
  if (excavation === undefined || excavation.bottom === null) return 'How large is not known';
  const { bottom, depth, top, volume } = excavation;
  const size = (metres: number) => words.sureText(metres, units);
  if (depth === null || top === null || volume === null)
    return `Bottom ${size(bottom.width)} × ${size(bottom.length)}, depth not known`;
  return `${size(top.width)} wide × ${size(top.length)} long at the top, ${size(depth.most)} deep, ${words.volumeText(volume, units)}`;
}
