import type { Target } from '@footmark/site';
import { useEffect, useMemo, useState } from 'react';
import { usePlanView } from '../canvas/planView';
import { useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { stateOf } from './answerEdits';
import { CrewBar } from './CrewBar';
import { CrewPlan } from './CrewPlan';
import { CrewTop } from './CrewTop';
import styles from './crew.module.css';
import { useCrewSession } from './crewSession';
import { FoundForm } from './FoundForm';
import { StopSheet } from './StopSheet';
import { showStop } from './showStop';
import { indexOf, placeOf, type Stop, stopsOf } from './stops';

/** One mark at a time, large: the plan, what it is found by, what not to hit, and what is done and found. `language`: the one spoken. */
export function CrewView({ language }: { readonly language: string }) {
  const site = useSite();
  const derived = useDerived();
  const stops = useMemo(() => stopsOf(site, derived), [site, derived]);
  const [at, setAt] = useState(() => placeOf(stops, firstToDo(stops)));
  const [putsDown, setPutsDown] = useState(false);
  const index = indexOf(stops, at);
  const stop = stops[index];
  useShown(stop);

  const goTo = (next: number) => {
    setPutsDown(false);
    setAt(placeOf(stops, Math.min(stops.length - 1, Math.max(0, next))));
  };
  const showTapped = (target: Target) => {
    const tapped = stops.findIndex((s) => JSON.stringify(s.target) === JSON.stringify(target));
    if (tapped >= 0) goTo(tapped);
  };
  return (
    <div className={styles.screen}>
      <CrewTop index={index} count={stops.length} />
      {/* what is painted is not rendered anew by itself */}
      <CrewPlan key={language} stop={stop ?? null} onTap={showTapped} />
      {stop === undefined ? (
        <main className={styles.sheet}>
          <p>{words.crew.label('nothing-to-do')}</p>
        </main>
      ) : putsDown && stop.key === at.key ? (
        <FoundForm key={stop.key} stop={stop} onClose={() => setPutsDown(false)} />
      ) : (
        <main className={styles.sheet} aria-label={stop.label}>
          <StopSheet key={stop.key} stop={stop} />
          <CrewBar
            stop={stop}
            isFirst={index === 0}
            isLast={index === stops.length - 1}
            onStep={(by) => goTo(index + by)}
            onPutDown={() => {
              goTo(index);
              setPutsDown(true);
            }}
          />
        </main>
      )}
    </div>
  );
}

/** The first with nothing done, else the first. */
function firstToDo(stops: readonly Stop[]): number {
  const { answer } = useCrewSession.getState();
  const open = answer === null ? -1 : stops.findIndex(({ about }) => stateOf(answer, about) === null);
  return Math.max(0, open);
}

/** The plan shows a stop with the points that it is taped from. */
function useShown(stop: Stop | undefined): void {
  const isReady = usePlanView((view) => view.camera !== null);
  useEffect(() => {
    if (!isReady || stop === undefined) return;
    select(stop.target);
    showStop(stop);
  }, [isReady, stop]);
}
