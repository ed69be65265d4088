import type { ObservationTag } from '@footmark/site';
import { ChevronRight } from 'lucide-react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { CountsTick } from './CountsTick';
import styles from './fit.module.css';
import { openEvidence, showEvidence } from './showEvidence';

type Props = {
  readonly tag: ObservationTag;
  /** The observation's name in the fit. */
  readonly observation: string;
  /** What is to be said of it. */
  readonly note: string;
  readonly isOdd?: boolean;
  /** There is much to say: whether it counts stands below it, with the way to where it can be put right. */
  readonly isLong?: boolean;
};

/** An observation of the fit: a tap shows where it is, and it can be set aside. */
export function EvidenceRow({ tag, observation, note, isOdd = false, isLong = false }: Props) {
  const site = useSite();
  const name = words.evidenceName(tag, site);
  const aside = site.setAside.includes(observation);
  return (
    <div
      className={styles.item}
      {...(aside ? { 'data-aside': true } : {})}
      {...(isOdd ? { 'data-odd': true } : {})}
    >
      <div className={isLong ? styles.long : styles.itemHead}>
        <Button className={styles.shows ?? ''} onPress={() => showEvidence(tag)}>
          {name}
          <small>{note}</small>
        </Button>
        <div className={isLong ? styles.answers : undefined}>
          <CountsTick observation={observation} name={name} />
          {isLong ? (
            <Action aria-label={`Check it: ${name}`} onPress={() => openEvidence(tag)}>
              Check it <ChevronRight size={20} aria-hidden />
            </Action>
          ) : null}
        </div>
      </div>
    </div>
  );
}
