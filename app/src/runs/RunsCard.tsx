import { addVisit, kindSpec } from '@footmark/site';
import { CalendarPlus, Columns2, Plus } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { currentSite, edit, useSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { CoverageFold } from './CoverageFold';
import { openComparison, useComparison } from './comparison';
import { LooseRuns } from './LooseRuns';
import { RunCard } from './RunCard';
import { newVisit, startRun } from './startRun';
import { VisitSection } from './VisitSection';
import { comparableVisits, VisitsSideBySide } from './VisitsSideBySide';
import { visitsLatestFirst } from './visitOrder';

/** The pushes of the camera, by the visit that they were made on. */
export function RunsCard() {
  const site = useSite();
  const selected = useWorkbench((w) => w.selected);
  const run = selected?.kind === 'run' ? site.runs.find((r) => r.id === selected.id) : undefined;
  const comparing = useComparison((c) => c.isOpen) && comparableVisits(site).length > 1;
  if (run !== undefined) return <RunCard key={run.id} run={run} />;
  return comparing ? <VisitsSideBySide /> : <RunList />;
}

function RunList() {
  const site = useSite();
  const [open, setOpen] = useState<string | null>(null);
  const canStart = site.paths.length > 0 && site.features.some((f) => kindSpec(f.kind).entry);
  const loose = site.runs.filter((r) => r.visit === null);
  const beginVisit = () => {
    const visit = newVisit(currentSite());
    if (edit('Add a visit', (s) => addVisit(s, { visit }))) setOpen(visit.id);
  };
  return (
    <section className={cards.card} aria-label="Runs">
      <div className={cards.head}>
        <h2>Runs</h2>
        <Action look={site.runs.length === 0 && canStart ? 'primary' : 'plain'} onPress={startRun}>
          <Plus size={20} aria-hidden /> Add a run
        </Action>
      </div>
      {site.runs.length === 0 ? (
        <p className={cards.empty}>
          {canStart
            ? 'One run for each push of the camera: where it went in, which way, and where the counter was zeroed.'
            : 'A run needs a way in and a pipe: put a cleanout or a stack into the yard, and draw the line from it.'}
        </p>
      ) : null}
      {visitsLatestFirst(site.visits).map((visit, i) => (
        <VisitSection
          key={visit.id}
          visit={visit}
          runs={site.runs.filter((r) => r.visit === visit.id)}
          isLatest={i === 0}
          isOpen={open === visit.id}
          onToggle={() => setOpen(open === visit.id ? null : visit.id)}
        />
      ))}
      {loose.length > 0 ? <LooseRuns runs={loose} /> : null}
      <CoverageFold />
      <div className={cards.actions}>
        <Action onPress={beginVisit}>
          <CalendarPlus size={20} aria-hidden /> Add a visit
        </Action>
        {comparableVisits(site).length < 2 ? null : (
          <Action onPress={() => openComparison(true)}>
            <Columns2 size={20} aria-hidden /> Compare two visits
          </Action>
        )}
      </div>
    </section>
  );
}
