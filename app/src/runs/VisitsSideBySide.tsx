import { compareVisits, type Site } from '@footmark/site';
import { ArrowLeft } from 'lucide-react';
import { useMemo } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice, type Option } from '../controls/Choice';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { ComparedThings } from './ComparedThings';
import { openComparison, useComparison } from './comparison';
import { useCardTop } from './useCardTop';
import { visitsLatestFirst } from './visitOrder';

/** Stands for the runs that are in no visit. */
const NO_VISIT = '';

/** What can be laid side by side, the latest first: visits, and the runs that are in none. */
export function comparableVisits(site: Site): readonly Option<string>[] {
  const loose = site.runs.some((r) => r.visit === null);
  return [
    ...visitsLatestFirst(site.visits).map((v) => ({ id: v.id, name: words.visitName(v) })),
    ...(loose ? [{ id: NO_VISIT, name: 'No visit yet' }] : []),
  ];
}

/** Two visits laid side by side: what has gone, what is still there, what is new, and what nobody looked at again. */
export function VisitsSideBySide() {
  const site = useSite();
  const derived = useDerived();
  const heading = useCardTop();
  const visits = comparableVisits(site);
  const chosen = useComparison();
  const kept = (id: string | null) => (visits.some((v) => v.id === id) ? id : null);
  const after = kept(chosen.after) ?? visits.find((v) => v.id !== chosen.before)?.id ?? null;
  const before = kept(chosen.before) ?? visits.find((v) => v.id !== after)?.id ?? null;
  const compared = useMemo(
    () =>
      before === null || after === null
        ? null
        : compareVisits(site, derived, visitOf(before), visitOf(after)),
    [site, derived, before, after],
  );
  const empty = compared !== null && Object.values(compared).every((list) => list.length === 0);
  return (
    <section className={cards.card} aria-label="Two visits side by side">
      <div className={cards.head}>
        <Action look="quiet" onPress={() => openComparison(false)}>
          <ArrowLeft size={20} aria-hidden /> Runs
        </Action>
      </div>
      <h2 ref={heading} className={cards.title} tabIndex={-1}>
        Two visits side by side
      </h2>
      <Choice
        label="Before"
        options={visits.filter((v) => v.id !== after)}
        value={before}
        onChange={(id) => useComparison.setState({ before: id, after })}
      />
      <Choice
        label="After"
        options={visits.filter((v) => v.id !== before)}
        value={after}
        onChange={(id) => useComparison.setState({ before, after: id })}
      />
      {compared === null ? (
        <p className={cards.empty}>There is one visit only: add another to lay beside it.</p>
      ) : empty ? (
        <p className={cards.empty}>Neither has a reading with a place on the line yet.</p>
      ) : (
        <>
          <ComparedThings fate="gone" things={compared.gone.map((before) => ({ before }))} />
          <ComparedThings fate="appeared" things={compared.appeared.map((after) => ({ after }))} />
          <ComparedThings fate="stillThere" things={compared.stillThere} />
          <ComparedThings
            fate="notLookedAtAgain"
            things={compared.notLookedAtAgain.map((before) => ({ before }))}
          />
          <ComparedThings fate="firstLookedAt" things={compared.firstLookedAt.map((after) => ({ after }))} />
        </>
      )}
    </section>
  );
}

function visitOf(id: string): string | null {
  return id === NO_VISIT ? null : id;
}
