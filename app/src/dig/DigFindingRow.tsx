import { type AnyDigFinding, type DigSeverity, findingSubject } from '@footmark/dig';
import type { CardThing } from '@footmark/words';
import { ChevronDown, Info, type LucideIcon, OctagonAlert, TriangleAlert } from 'lucide-react';
import { useState } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { bringIntoView } from '../canvas/planView';
import { showPlace } from '../cards/showPlace';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './finding.module.css';
import { RuleSource } from './RuleSource';

/** Told apart by their shapes, too: in the sun colours go. */
const ICONS: Record<DigSeverity, LucideIcon> = { must: OctagonAlert, should: TriangleAlert, note: Info };

type Props = {
  readonly finding: AnyDigFinding;
  /** The thing on whose card it stands. */
  readonly here?: CardThing | undefined;
};

/** One thing that stands in the way, in a line: what, and how much. A tap shows the place, and the rest of it: what would cure it, which rule. */
export function DigFindingRow({ finding, here }: Props) {
  const site = useSite();
  const [isOpen, setOpen] = useState(false);
  const Icon = ICONS[finding.severity];
  const subject = isSubject(here, finding) ? '' : words.digFindingSubject(finding, site);
  return (
    <Disclosure
      className={styles.finding ?? ''}
      data-severity={finding.severity}
      isExpanded={isOpen}
      onExpandedChange={(open) => {
        setOpen(open);
        if (open && finding.place !== null) bringIntoView(finding.place);
      }}
    >
      <Heading level={4} className={styles.heading ?? ''}>
        <Button slot="trigger" className={styles.line ?? ''}>
          <Icon size={22} aria-hidden className={styles.icon} />
          <span className={styles.what}>
            {words.digFindingTitle(finding, site, here)}
            {subject === '' ? null : <small>{subject}</small>}
          </span>
          <ChevronDown size={20} aria-hidden className={styles.chevron} />
        </Button>
      </Heading>
      <DisclosurePanel>{isOpen ? <Detail finding={finding} here={here} /> : null}</DisclosurePanel>
    </Disclosure>
  );
}

function Detail({ finding, here }: Props) {
  const site = useSite();
  const { text, cure } = words.digFindingText(finding, site, here);
  const subject = findingSubject(finding);
  return (
    <div className={styles.detail}>
      <p>{text}</p>
      <p>
        <strong>{cure}</strong>
      </p>
      {finding.rule === null ? null : <RuleSource rule={finding.rule} />}
      {subject.kind === 'site' || isSubject(here, finding) ? null : (
        <Action
          onPress={() => {
            showPlace(subject);
            if (finding.place !== null) bringIntoView(finding.place);
          }}
        >
          Open its card
        </Action>
      )}
    </div>
  );
}

function isSubject(here: CardThing | undefined, finding: AnyDigFinding): boolean {
  const subject = findingSubject(finding);
  return here !== undefined && here.kind === subject.kind && here.id === subject.id;
}
