import type { Target } from '@footmark/site';
import { LocateFixed, Maximize } from 'lucide-react';
import { useRef, useState } from 'react';
import { lookingHand } from '../canvas/lookingHand';
import { PlanCanvas } from '../canvas/PlanCanvas';
import { showAll } from '../canvas/showAll';
import { Action } from '../controls/Action';
import { NorthSign } from '../earth/NorthSign';
import { useDerived } from '../session/siteSession';
import { ThemeButton } from '../theme/ThemeButton';
import { words } from '../words';
import styles from './crew.module.css';
import { showStop } from './showStop';
import type { Stop } from './stops';
import { WhereAmI } from './WhereAmI';

type Props = { readonly stop: Stop | null; readonly onTap: (target: Target) => void };

/** The plan to look at: it can be moved, and a tap on a mark shows that. */
export function CrewPlan({ stop, onTap }: Props) {
  const { frame } = useDerived();
  // the canvas takes its hand once
  const tapped = useRef(onTap);
  tapped.current = onTap;
  const [hand] = useState(() => lookingHand((target) => tapped.current(target)));
  const { label } = words.crew;
  return (
    <section className={styles.plan} aria-label={label('whole-yard')}>
      <PlanCanvas hand={hand} />
      <div className={styles.north}>
        <NorthSign frame={frame} label={label(frame.known ? 'north' : 'north-assumed')} />
      </div>
      <div className={styles.views}>
        <ThemeButton label={label('colours')} />
        <Action look="icon" aria-label={label('whole-yard')} onPress={showAll}>
          <Maximize size={24} aria-hidden />
        </Action>
        {stop === null ? null : (
          <Action look="icon" aria-label={label('this-mark')} onPress={() => showStop(stop)}>
            <LocateFixed size={24} aria-hidden />
          </Action>
        )}
      </div>
      {frame.toEarth === null ? null : <WhereAmI stop={stop} toEarth={frame.toEarth} />}
    </section>
  );
}
