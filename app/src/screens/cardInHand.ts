import { useOfSite } from '../session/siteSession';
import { type Leaf, type Step, useWorkbench, type Workbench } from '../session/workbench';
import type { Tool } from '../tools/tool';

export type CardInHand =
  | { readonly is: 'leaf'; readonly leaf: Leaf }
  | { readonly is: 'tool'; readonly tool: Tool }
  | { readonly is: 'group'; readonly ids: readonly string[] }
  | { readonly is: 'step'; readonly step: Step };

/** Whose card is shown: that of a leaf that was laid on top, of the tool, of several things, or of the step. */
export function cardInHand({ leaf, tool, group, step }: Workbench): CardInHand {
  if (leaf !== null) return { is: 'leaf', leaf };
  if (tool !== null) return { is: 'tool', tool };
  return group.length > 0 ? { is: 'group', ids: group } : { is: 'step', step };
}

/** Whether the card has a table: that of a run does, with its readings. */
export function useWideCard(): boolean {
  const shown = useWorkbench((workbench) => {
    const card = cardInHand(workbench);
    const { selected } = workbench;
    return card.is === 'step' && card.step === 'runs' && selected?.kind === 'run' ? selected.id : null;
  });
  return useOfSite(({ runs }) => runs.some((run) => run.id === shown));
}
