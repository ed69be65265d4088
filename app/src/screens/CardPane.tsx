import { ChevronDown, ChevronUp } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { Tab, TabList, Tabs } from 'react-aria-components';
import { ChecksCard } from '../cards/ChecksCard';
import { DraftCard } from '../cards/DraftCard';
import { GroupCard } from '../cards/GroupCard';
import { HandOffCard } from '../cards/HandOffCard';
import { HistoryCard } from '../cards/HistoryCard';
import { KeysCard } from '../cards/KeysCard';
import { LayersCard } from '../cards/LayersCard';
import { LineCard } from '../cards/LineCard';
import { MeasureCard } from '../cards/MeasureCard';
import { YardCard } from '../cards/YardCard';
import { Action } from '../controls/Action';
import { RouteCard } from '../dig/RouteCard';
import { RouteState } from '../dig/RouteState';
import { EarthCard } from '../earth/EarthFold';
import { FitCard } from '../fit/FitCard';
import { MarksCard } from '../marks/MarksCard';
import { OthersCard } from '../others/OthersCard';
import { RerouteCard } from '../reroute/RerouteCard';
import { RulesCard } from '../rules/RulesCard';
import { RunsCard } from '../runs/RunsCard';
import { useDerived, useSite } from '../session/siteSession';
import {
  type CardHeight,
  goTo,
  type Leaf,
  type Step,
  steps,
  toggleLeaf,
  useWorkbench,
} from '../session/workbench';
import styles from './CardPane.module.css';
import { cardInHand } from './cardInHand';
import { stepState } from './stepState';

const STEP_NAMES: Record<Step, string> = {
  yard: 'Yard',
  line: 'Line',
  runs: 'Runs',
  marks: 'Marks',
  route: 'Route',
  'hand-off': 'Hand-off',
};

const CARDS: Record<Step, () => React.ReactNode> = {
  yard: YardCard,
  line: LineCard,
  runs: RunsCard,
  marks: MarksCard,
  route: RouteCard,
  'hand-off': HandOffCard,
};

const LEAVES: Record<Leaf, (props: { readonly onClose: () => void }) => React.ReactNode> = {
  checks: ChecksCard,
  history: HistoryCard,
  layers: LayersCard,
  keys: KeysCard,
  north: EarthCard,
  rules: RulesCard,
  reroute: RerouteCard,
  fit: FitCard,
  others: OthersCard,
};

/** The card of what is in hand, and the steps of the job as its index tabs. Beside the plan, or below it on a narrow screen. */
export function CardPane() {
  const { step, tool, leaf, cardHeight, selected, group } = useWorkbench();
  const site = useSite();
  const derived = useDerived();
  const body = useRef<HTMLDivElement>(null);
  // what a leaf brings out on the plan does not make it another card
  const shown = JSON.stringify(leaf === null ? [step, tool?.is, selected, group] : [leaf]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another card begins at its top
  useEffect(() => {
    body.current?.scrollTo(0, 0);
    // what had the focus has gone with the old card: a reader goes on at the new one's heading
    if (document.activeElement !== document.body) return;
    const heading = body.current?.querySelector('h2');
    heading?.setAttribute('tabindex', '-1');
    heading?.focus({ preventScroll: true });
  }, [shown]);
  return (
    <aside className={styles.pane} data-height={cardHeight} aria-label="Card">
      <div className={styles.grip}>
        <Action
          look="quiet"
          aria-label={cardHeight === 'full' ? 'Lower the card' : 'Raise the card'}
          onPress={() => useWorkbench.setState({ cardHeight: nextHeight(cardHeight) })}
        >
          {cardHeight === 'full' ? (
            <ChevronDown size={22} aria-hidden />
          ) : (
            <ChevronUp size={22} aria-hidden />
          )}
        </Action>
      </div>
      <Tabs
        className={styles.tabs ?? ''}
        selectedKey={step}
        onSelectionChange={(key) => {
          const next = steps.find((s) => s === key);
          if (next !== undefined && next !== step) goTo(next);
        }}
      >
        <TabList className={styles.list ?? ''} aria-label="Steps of the job">
          {steps.map((id) => (
            <Tab key={id} id={id} className={styles.tab ?? ''} onPress={() => press(id)}>
              {STEP_NAMES[id]}
              <span className={styles.state}>
                {id === 'route' ? <RouteState /> : stepState(id, site, derived)}
              </span>
            </Tab>
          ))}
        </TabList>
      </Tabs>
      <div ref={body} className={styles.body}>
        <CardInHand />
      </div>
    </aside>
  );
}

function CardInHand() {
  const shown = cardInHand(useWorkbench());
  switch (shown.is) {
    case 'leaf': {
      const LeafCard = LEAVES[shown.leaf];
      return <LeafCard onClose={() => toggleLeaf(shown.leaf)} />;
    }
    case 'tool':
      return shown.tool.is === 'measure' ? (
        <MeasureCard tool={shown.tool} />
      ) : (
        <DraftCard tool={shown.tool} />
      );
    case 'group':
      return <GroupCard ids={shown.ids} />;
    case 'step': {
      const StepCard = CARDS[shown.step];
      return <StepCard />;
    }
  }
}

/** A press on a step goes to its list, also when it is in hand already, and raises a card that is down. */
function press(step: Step): void {
  if (useWorkbench.getState().tool === null) goTo(step);
  useWorkbench.setState((w) => ({ cardHeight: w.cardHeight === 'low' ? 'half' : w.cardHeight }));
}

function nextHeight(height: CardHeight): CardHeight {
  return height === 'low' ? 'half' : height === 'half' ? 'full' : 'low';
}
