import { ChevronDown, ChevronUp } from 'lucide-react';
import { memo, useEffect, useRef } from 'react';
import { Tab, TabList, Tabs } from 'react-aria-components';
import { Action } from '../controls/Action';
import { bringSoon } from '../parts/bringSoon';
import { Shown } from '../parts/Shown';
import { takePicture } from '../pictures/pictureHand';
import { Follows } from '../session/Follows';
import { useOfDerived } from '../session/siteSession';
import { type CardHeight, goTo, type Step, steps, useWorkbench } from '../session/workbench';
import styles from './CardPane.module.css';
import { cardInHand } from './cardInHand';
import { cardPart, laterCards, routeState } from './cardParts';
import { stepState } from './stepState';

const STEP_NAMES: Record<Step, string> = {
  yard: 'Yard',
  line: 'Line',
  runs: 'Runs',
  marks: 'Marks',
  route: 'Route',
  'hand-off': 'Hand-off',
};

/** What every tab shows its card in. */
const BODY = 'card-body';

/** The card of what is in hand, and the steps of the job as its index tabs. Beside the plan, or below it on a narrow screen. */
export function CardPane() {
  const workbench = useWorkbench();
  const { step, tool, leaf, cardHeight, selected, group } = workbench;
  useEffect(() => bringSoon(laterCards), []);
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
      <Follows>
        <StepTabs step={step} />
      </Follows>
      <div ref={body} id={BODY} className={styles.body} role="tabpanel" aria-label={STEP_NAMES[step]}>
        <Follows atOnce={() => isUsed(body.current)}>
          <Shown of={cardPart(cardInHand(workbench))} />
        </Follows>
      </div>
    </aside>
  );
}

/** What changes with the edit that it makes, or closes: a list to choose from lies over the card. A field by itself keeps the text that was typed. */
const CHANGING = 'button, select, [type="checkbox"], [type="radio"], form *, [role="grid"] *';
const LIST = '[role="listbox"] *';

/** Whether the edit is made by something of the card that would show for a moment what was there before. */
function isUsed(card: HTMLElement | null): boolean {
  const { activeElement: used } = document;
  return used?.matches(LIST) === true || (card?.contains(used) === true && used?.matches(CHANGING) === true);
}

/** The steps of the job; each says by itself how it stands. */
const StepTabs = memo(function StepTabs({ step }: { readonly step: Step }) {
  return (
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
          <Tab
            key={id}
            id={id}
            className={styles.tab ?? ''}
            onPress={() => press(id)}
            // one panel for all: the library would name one for each
            render={(props) => ('href' in props ? <a {...props} /> : <div {...props} aria-controls={BODY} />)}
          >
            {STEP_NAMES[id]}
            <span className={styles.state}>
              {id === 'route' ? <Shown of={routeState} /> : <StepState of={id} />}
            </span>
          </Tab>
        ))}
      </TabList>
    </Tabs>
  );
});

function StepState({ of }: { readonly of: Exclude<Step, 'route'> }) {
  return useOfDerived((derived, site) => stepState(of, site, derived));
}

/** A press on a step goes to its list, also when it is in hand already, and raises a card that is down. */
function press(step: Step): void {
  if (useWorkbench.getState().tool === null) {
    takePicture(null);
    goTo(step);
  }
  useWorkbench.setState((w) => ({ cardHeight: w.cardHeight === 'low' ? 'half' : w.cardHeight }));
}

function nextHeight(height: CardHeight): CardHeight {
  return height === 'low' ? 'half' : height === 'half' ? 'full' : 'low';
}
