import type { EdgeClearance, SubjectIs } from '@footmark/dig';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { bringIntoView } from '../canvas/planView';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { RuleSource } from './RuleSource';

/** How many are listed at first. */
const FIRST = 12;

/** What one pipe or dig keeps clear of, the worst first. */
export function ClearancesFold({ clearances }: { readonly clearances: readonly EdgeClearance[] }) {
  const site = useSite();
  const [chosen, setChosen] = useState<string | null>(null);
  const subjects = new Map(clearances.flatMap(({ of }) => (of.is === 'mark' ? [] : [[keyOf(of), of]])));
  const [first] = subjects.keys();
  const key = chosen !== null && subjects.has(chosen) ? chosen : (first ?? null);
  if (key === null) return null;
  const missed = clearances.filter((c) => c.of.is !== 'mark' && c.verdict === 'misses').length;
  return (
    <Fold title="How near things are" result={missed === 0 ? 'far enough' : `${missed} nearer than asked`}>
      <Choice
        label="From"
        options={[...subjects].map(([id, of]) => ({
          id,
          name: words.targetName(
            of.is === 'path'
              ? { kind: 'path', id: of.id }
              : { kind: 'dig', id: of.is === 'outline' ? of.dig : '' },
            site,
          ),
        }))}
        value={key}
        onChange={setChosen}
      />
      <ClearanceRows key={key} found={clearances.filter((c) => keyOf(c.of) === key)} />
    </Fold>
  );
}

/** Clearances as rows: a tap shows the place. */
export function ClearanceRows({ found }: { readonly found: readonly EdgeClearance[] }) {
  const site = useSite();
  const [all, setAll] = useState(false);
  const shown = all ? found : found.slice(0, FIRST);
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
