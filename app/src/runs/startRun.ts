import {
  addRun,
  addVisit,
  freeRunLetter,
  kindSpec,
  type Run,
  type Site,
  settings,
  type Visit,
} from '@footmark/site';
import { currentSite, edit } from '../session/siteSession';
import { today } from '../session/today';
import { select } from '../session/workbench';
import { newId } from '../tools/newId';
import { visitsLatestFirst } from './visitOrder';

/** Starts a run of the latest visit, or of one that begins today when there is none, and opens its card. */
export function startRun(): void {
  const site = currentSite();
  const visit = visitsLatestFirst(site.visits)[0];
  const begun = visit === undefined ? newVisit(site) : null;
  const run = runAtWayIn(site, (visit ?? begun)?.id ?? null);
  const added = edit('Add a run', (s) => addRun(begun === null ? s : addVisit(s, { visit: begun }), { run }));
  if (added) select({ kind: 'run', id: run.id });
}

/** A visit today: the first look, or what mostly follows one. */
export function newVisit(site: Site): Visit {
  const purpose = site.visits.length + site.runs.length === 0 ? 'first-look' : 'after-cleaning';
  return { id: newId('v'), date: today(), purpose, note: '' };
}

/** A run at the first way in that stands on a pipe and has none yet; everything of it can be changed. */
function runAtWayIn(site: Site, visit: string | null): Run {
  const waysIn = site.features.filter((f) => kindSpec(f.kind).entry);
  const tied = site.paths.flatMap((path) =>
    path.vertices.flatMap(({ spot }, i) =>
      spot.by === 'at' && waysIn.some((f) => f.id === spot.point.of)
        ? [{ entry: spot.point.of, path: path.id, isEnd: i === path.vertices.length - 1 }]
        : [],
    ),
  );
  const way = tied.find((t) => !site.runs.some((r) => r.entry === t.entry)) ?? tied[0];
  return {
    id: newId('r'),
    letter: freeRunLetter(site.runs),
    name: '',
    visit,
    entry: way?.entry ?? waysIn[0]?.id ?? null,
    path: way?.path ?? site.paths[0]?.id ?? null,
    direction: way?.isEnd ? 'against-flow' : 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: settings.counterResolution.value,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: [],
  };
}
