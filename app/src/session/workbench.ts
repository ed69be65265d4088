import type { Target } from '@footmark/site';
import { create } from 'zustand';
import type { Tool } from '../tools/tool';

/** The steps of the job, in its order. */
export const steps = ['yard', 'line', 'runs', 'marks', 'hand-off'] as const;
export type Step = (typeof steps)[number];

/** How much of a phone's screen the card takes. */
export type CardHeight = 'low' | 'half' | 'full';

type Workbench = {
  readonly step: Step;
  readonly selected: Target | null;
  /** The vertex of the selected thing that is in hand. */
  readonly vertex: string | null;
  readonly tool: Tool | null;
  readonly cardHeight: CardHeight;
  /** The list of checks lies over the step's card. */
  readonly checksOpen: boolean;
  /** One sentence that fades: what just happened, or why a gesture did nothing. */
  readonly notice: string | null;
};

/** What the person has in hand: step, selection, tool. Not part of the document, not undone. */
export const useWorkbench = create<Workbench>()(() => ({
  step: 'yard',
  selected: null,
  vertex: null,
  tool: null,
  cardHeight: 'half',
  checksOpen: false,
  notice: null,
}));

export function goTo(step: Step): void {
  useWorkbench.setState({ step, selected: null, vertex: null, tool: null, checksOpen: false });
}

export function select(selected: Target | null, vertex: string | null = null): void {
  useWorkbench.setState({ selected, vertex });
}

export function take(tool: Tool | null): void {
  useWorkbench.setState({ tool, selected: null, vertex: null });
}

export function toggleChecks(): void {
  useWorkbench.setState(({ checksOpen }) => ({ checksOpen: !checksOpen }));
}

export function notify(notice: string | null): void {
  useWorkbench.setState({ notice });
}

/** The step whose card shows a target. */
function stepOf(target: Target): Step | null {
  switch (target.kind) {
    case 'feature':
      return 'yard';
    case 'path':
      return 'line';
    case 'run':
      return 'runs';
    case 'reading':
      return 'marks';
    case 'site':
      return null;
  }
}

/** Shows a target: its step, its card, itself selected. */
export function show(target: Target): void {
  const step = stepOf(target);
  if (step !== null) goTo(step);
  select(target);
}
