import type { Drawing, Label } from '@footmark/drawing';
import { distance } from '@footmark/geometry';
import { paintedLabels } from './placeTexts';

/** Symbols nearer than this (mm) lie over each other. */
export const OVER_MM = 3;
/** Nearer than this (mm) no scale of use tells them apart. */
export const SAME_MM = 0.5;

/**
 * A drawing in which painted points that are nearer than `within` mm to each other at a scale share one text. `always`: each text is written, whatever
 * crowds there.
 */
export function mergeTexts(
  drawing: Drawing,
  mmPerMetre: number,
  { within, always }: Readonly<{ within: number; always: boolean }>,
): Drawing {
  const groups: { readonly first: Label; readonly names: string[] }[] = [];
  for (const label of paintedLabels(drawing)) {
    const group = groups.find((g) => distance(g.first.at, label.at) * mmPerMetre < within);
    if (group === undefined) groups.push({ first: label, names: [nameOf(label)] });
    else group.names.push(nameOf(label));
  }
  const merged = groups.map(({ first, names }): Label => {
    const label: Label = always ? { ...first, whenCrowded: 'always' } : first;
    return names.length === 1 ? label : { ...label, text: names.join(', '), brief: names.join(', ') };
  });
  const painted = new Set(paintedLabels(drawing));
  return {
    ...drawing,
    layers: drawing.layers.map((layer) =>
      layer.name === 'marks'
        ? { ...layer, labels: [...layer.labels.filter((l) => !painted.has(l)), ...merged] }
        : layer,
    ),
  };
}

/** What is painted, without what was seen. */
function nameOf({ brief, text }: Label): string {
  return brief ?? text;
}
