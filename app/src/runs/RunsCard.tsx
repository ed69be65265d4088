import { addRun, freeRunLetter, kindSpec, type Run, settings } from '@footmark/site';
import { ChevronRight, Plus } from 'lucide-react';
import { Button } from 'react-aria-components';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { currentSite, derivedFrom, edit, useSite } from '../session/siteSession';
import { select, useWorkbench } from '../session/workbench';
import { newId } from '../tools/newId';
import { words } from '../words';
import { entryOf } from './entryOf';
import { RunCard } from './RunCard';

/** The pushes of the camera. */
export function RunsCard() {
  const site = useSite();
  const selected = useWorkbench((w) => w.selected);
  const run = selected?.kind === 'run' ? site.runs.find((r) => r.id === selected.id) : undefined;
  if (run !== undefined) return <RunCard key={run.id} run={run} />;
  const canStart = site.paths.length > 0 && site.features.some((f) => kindSpec(f.kind).entry);
  return (
    <section className={styles.card} aria-label="Runs">
      <div className={styles.head}>
        <h2>Runs</h2>
        <Action look={site.runs.length === 0 && canStart ? 'primary' : 'plain'} onPress={startRun}>
          <Plus size={20} aria-hidden /> Add a run
        </Action>
      </div>
      {site.runs.length === 0 ? (
        <p className={styles.empty}>
          {canStart
            ? 'One run for each push of the camera: where it went in, which way, and where the counter was zeroed.'
            : 'A run needs a way in and a pipe: put a cleanout or a stack into the yard, and draw the line from it.'}
        </p>
      ) : (
        <ul className={styles.rows}>
          {site.runs.map((r) => (
            <li key={r.id}>
              <Button className={styles.row ?? ''} onPress={() => select({ kind: 'run', id: r.id })}>
                <span className={styles.paint}>{r.letter}</span>
                <span className={styles.grow}>
                  {entryOf(site, r)?.name || 'No entry chosen'}
                  <small>{words.directionName(r.direction).toLowerCase()}</small>
                </span>
                <span className={styles.number}>
                  {r.readings.length} {r.readings.length === 1 ? 'reading' : 'readings'}
                </span>
                <ChevronRight size={20} aria-hidden />
              </Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Starts a run at the first way in that stands on a pipe; everything of it can be changed. */
function startRun(): void {
  const site = currentSite();
  const tied = site.paths.flatMap((path) =>
    path.vertices.flatMap((v) => {
      const entry =
        v.spot.by === 'at'
          ? site.features.find((f) => v.spot.by === 'at' && f.id === v.spot.point.of)
          : undefined;
      return entry !== undefined && kindSpec(entry.kind).entry ? [{ entry: entry.id, path: path.id }] : [];
    }),
  );
  const unused = tied.find((t) => !site.runs.some((r) => r.entry === t.entry)) ?? tied[0];
  const entry = unused?.entry ?? site.features.find((f) => kindSpec(f.kind).entry)?.id ?? null;
  const path = unused?.path ?? site.paths[0]?.id ?? null;
  const points = path === null ? undefined : derivedFrom(site).paths.get(path);
  const isEnd = points?.path.vertices.at(-1)?.spot.by === 'at' && unused !== undefined && lastIs(path, entry);
  const run: Run = {
    id: newId('r'),
    letter: freeRunLetter(site.runs),
    name: '',
    visit: null,
    entry,
    path,
    direction: isEnd ? 'against-flow' : 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: settings.counterResolution.value,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: [],
  };
  edit('Add a run', (s) => addRun(s, { run }));
  select({ kind: 'run', id: run.id });

  function lastIs(pathId: string | null, feature: string | null): boolean {
    const last = site.paths.find((p) => p.id === pathId)?.vertices.at(-1)?.spot;
    return last?.by === 'at' && last.point.of === feature;
  }
}
