import type { LayerName } from '@footmark/drawing';
import type { Target } from '@footmark/site';
import { create } from 'zustand';
import type { Tool } from '../tools/tool';

/** The steps of the job, in its order. */
export const steps = ['yard', 'line', 'runs', 'marks', 'route', 'hand-off'] as const;
export type Step = (typeof steps)[number];

/** How much of a phone's screen the card takes. */
export type CardHeight = 'low' | 'half' | 'full';

/** What can lie over the step's card. */
export type Leaf =
  | 'checks'
  | 'history'
  | 'layers'
  | 'keys'
  | 'north'
  | 'fit'
  | 'rules'
  | 'reroute'
  | 'others';

export type Notice = { readonly text: string; readonly canUndo: boolean };

export type Workbench = {
  readonly step: Step;
  readonly selected: Target | null;
  /** Ids of features and paths that are chosen together, two or more; empty while one thing or none is. */
  readonly group: readonly string[];
  /** Taps add to the group and take from it. */
  readonly gathering: boolean;
  /** The vertex of the selected thing that is in hand. */
  readonly vertex: string | null;
  /** The vertex at the end of the leg whose length is being changed. */
  readonly leg: string | null;
  readonly tool: Tool | null;
  readonly cardHeight: CardHeight;
  readonly leaf: Leaf | null;
  readonly hiddenLayers: ReadonlySet<LayerName>;
  /** A sentence that fades: what just happened, or why a gesture did nothing; with a button to undo it where that helps. */
  readonly notice: Notice | null;
};

const NOTHING_IN_HAND = { selected: null, group: [], vertex: null, leg: null } as const;

/** What the person has in hand: step, selection, tool. Not part of the document, not undone. */
export const useWorkbench = create<Workbench>()(() => ({
  step: 'yard',
  ...NOTHING_IN_HAND,
  gathering: false,
  tool: null,
  cardHeight: 'half',
  leaf: null,
  hiddenLayers: new Set<LayerName>(),
  notice: null,
}));

export function goTo(step: Step): void {
  useWorkbench.setState({ step, ...NOTHING_IN_HAND, tool: null, leaf: null, gathering: false });
}

export function select(selected: Target | null, vertex: string | null = null): void {
  useWorkbench.setState({ ...NOTHING_IN_HAND, selected, vertex, leaf: null });
}

/** Opens the length of the leg that ends at a vertex. */
export function selectLeg(selected: Target, end: string): void {
  useWorkbench.setState({ ...NOTHING_IN_HAND, selected, leg: end, leaf: null });
}

/** Chooses several things together; one alone is simply selected. */
export function selectGroup(targets: readonly Target[]): void {
  const things = targets.filter((t) => t.kind === 'feature' || t.kind === 'path');
  const [only] = things;
  if (things.length < 2) useWorkbench.setState({ ...NOTHING_IN_HAND, selected: only ?? null, leaf: null });
  else {
    useWorkbench.setState({
      ...NOTHING_IN_HAND,
      step: 'yard',
      leaf: null,
      group: things.map((t) => t.id),
    });
  }
}

export function take(tool: Tool | null): void {
  useWorkbench.setState({ tool, ...NOTHING_IN_HAND, leaf: null, gathering: false });
}

/** Lays a leaf over the step's card, or takes it away when it is there. */
export function toggleLeaf(leaf: Leaf): void {
  useWorkbench.setState((w) => ({ leaf: w.leaf === leaf ? null : leaf, cardHeight: raised(w.cardHeight) }));
}

function raised(height: CardHeight): CardHeight {
  return height === 'low' ? 'half' : height;
}

export function notify(text: string | null): void {
  useWorkbench.setState({ notice: text === null ? null : { text, canUndo: false } });
}

/** Says what an edit did besides what was asked, and offers to undo it. */
export function notifyOfEdit(text: string): void {
  useWorkbench.setState({ notice: { text, canUndo: true } });
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
    case 'set-out':
      return 'marks';
    case 'dig':
      return 'route';
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
