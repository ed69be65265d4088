import type { EdgeClearance, SubjectIs } from '@footmark/dig';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { bringIntoView } from '../canvas/planView';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { RuleSource } from './RuleSource';

/** How many are listed at first. */
const FIRST = 12;

/** What one pipe, dig or mark keeps clear of, the worst first. */
export function ClearancesFold({ clearances }: { readonly clearances: readonly EdgeClearance[] }) {
  const site = useSite();
  const { marks } = useDerived();
  const [chosen, setChosen] = useState<string | null>(null);
  const subjects = new Map<string, SubjectIs>(clearances.map(({ of }) => [keyOf(of), of]));
  const [first] = subjects.keys();
  const key = chosen !== null && subjects.has(chosen) ? chosen : (first ?? null);
  if (key === null) return null;
  const missed = clearances.filter((c) => c.verdict === 'misses').length;
  return (
    <Fold title="How near things are" result={missed === 0 ? 'far enough' : `${missed} nearer than asked`}>
      <Choice
        label="From"
        options={[...subjects].map(([id, of]) => ({
          id,
          name: nameOf(of),
        }))}
        value={key}
        onChange={setChosen}
      />
      <ClearanceRows key={key} found={clearances.filter((c) => keyOf(c.of) === key)} />
    </Fold>
  );

  function nameOf(of: SubjectIs): string {
    switch (of.is) {
      case 'path':
        return words.targetName({ kind: 'path', id: of.id }, site);
      case 'outline':
        return words.targetName({ kind: 'dig', id: of.dig }, site);
      case 'mark':
        return `Mark ${marks.find((m) => m.reading.id === of.reading)?.label ?? of.reading}`;
    }
  }
}

type RowsProps = { readonly found: readonly EdgeClearance[]; readonly first?: number };

/** Clearances as rows, the first few of them until all are asked for: a tap shows the place. */
export function ClearanceRows({ found, first = FIRST }: RowsProps) {
  const site = useSite();
  const [all, setAll] = useState(false);
  const shown = all ? found : found.slice(0, first);
  return (
    <>
      {shown.map((clearance) => (
        <Button
          key={`${clearance.feature}/${clearance.from.x}/${clearance.from.y}`}
          className={cards.finding ?? ''}
          data-severity={LOOKS[clearance.verdict ?? 'meets']}
          onPress={() => bringIntoView(clearance.at)}
        >
          <strong>{words.targetName({ kind: 'feature', id: clearance.feature }, site)}</strong>{' '}
          {words.obstacleText(clearance, site)}
          {clearance.rule === null ? null : <RuleSource rule={clearance.rule} />}
        </Button>
      ))}
      {shown.length < found.length ? (
        <Action look="quiet" onPress={() => setAll(true)}>
          All {found.length}
        </Action>
      ) : null}
    </>
  );
}

const LOOKS: Record<NonNullable<EdgeClearance['verdict']>, string> = {
  misses: 'warning',
  'by-depth': 'warning',
  crosses: 'note',
  serves: 'note',
  meets: 'note',
};

function keyOf(of: SubjectIs): string {
  switch (of.is) {
    case 'path':
      return `path ${of.id}`;
    case 'outline':
      return `dig ${of.dig}`;
    case 'mark':
      return `mark ${of.run} ${of.reading}`;
  }
}
