import type { AnyDigFinding, DigSeverity } from '@footmark/dig';
import type { CardThing } from '@footmark/words';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { words } from '../words';
import { DigFindingRow } from './DigFindingRow';
import styles from './finding.module.css';

type Props = { readonly findings: readonly AnyDigFinding[]; readonly here?: CardThing | undefined };

/** How many of what must be settled stand there at first: more do not fit a phone's card. */
const FIRST_MUSTS = 4;

const LESSER = ['should', 'note'] as const satisfies readonly DigSeverity[];

/** What must be settled before the dig, the most pressing first. */
export function MustSection({ findings, here }: Props) {
  const musts = findings.filter((f) => f.severity === 'must');
  if (musts.length === 0) {
    return (
      <p className={cards.empty}>
        {findings.length === 0
          ? 'Nothing that is drawn stands in the way.'
          : 'Nothing that is drawn must be settled first.'}
      </p>
    );
  }
  return (
    <section className={cards.section} aria-label={words.digSeverityName('must')}>
      <h3>
        {words.digSeverityName('must')}: {musts.length}
      </h3>
      <FindingList findings={musts} here={here} first={FIRST_MUSTS} />
    </section>
  );
}

/** What to look at and what is worth knowing, folded, with how many there are. */
export function LesserFolds({ findings, here }: Props) {
  return LESSER.map((severity) => {
    const found = findings.filter((f) => f.severity === severity);
    if (found.length === 0) return null;
    return (
      <Fold key={severity} title={words.digSeverityName(severity)} result={String(found.length)}>
        <FindingList findings={found} here={here} />
      </Fold>
    );
  });
}

/** Findings in a line each; of many the `first` few, until all are asked for. For one that is left over a button would take as much room. */
export function FindingList({ findings, here, first = Infinity }: Props & { readonly first?: number }) {
  const [all, setAll] = useState(false);
  const shown = all || findings.length <= first + 1 ? findings : findings.slice(0, first);
  const keys = steadyKeys(shown);
  return (
    <>
      <ul className={styles.list}>
        {shown.map((finding, i) => (
          <li key={keys[i]}>
            <DigFindingRow finding={finding} here={here} />
          </li>
        ))}
      </ul>
      {shown.length < findings.length ? (
        <Action look="quiet" onPress={() => setAll(true)}>
          {findings.length - shown.length} more
        </Action>
      ) : null}
    </>
  );
}

/** A finding stays the same one while its numbers change, so that its line stays open under a moving hand. */
function steadyKeys(findings: readonly AnyDigFinding[]): readonly string[] {
  const seen = new Map<string, number>();
  return findings.map(({ code, values }) => {
    const key = [code, ...Object.values(values).filter((v) => typeof v === 'string')].join(' ');
    const before = seen.get(key) ?? 0;
    seen.set(key, before + 1);
    return before === 0 ? key : `${key} ${before}`;
  });
}
