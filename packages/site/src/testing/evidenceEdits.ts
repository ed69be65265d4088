import { derive } from '../derive/derive';
import { type FoundReport, type FoundWhere, foundStates } from '../document/asFound';
import type { PipeLevel } from '../document/path';
import type { ReadingRef } from '../document/readingRef';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import { addAsFound, changeAsFound, removeAsFound } from '../edits/asFoundEdits';
import { setField } from '../edits/featureEdits';
import { makeAsBuilt } from '../edits/makeAsBuilt';
import { mergeAnswer } from '../edits/mergeAnswer';
import { addPair, removePair, tellApart } from '../edits/pairEdits';
import { changePathVertex, removeKnownLength, setKnownLength } from '../edits/pathEdits';
import { removeThing } from '../edits/removeThing';
import {
  addReadings,
  changeReading,
  changeRun,
  moveReading,
  nextReadingNumber,
  removeReading,
  sortReadings,
} from '../edits/runEdits';
import { setAside, setSigma } from '../edits/siteEdits';
import { dropFit, takeFit } from '../edits/takeFit';
import { addVisit, changeVisit, removeVisit } from '../edits/visitEdits';
import { canWeigh, weighFind } from '../edits/weighFind';
import { fitRuns } from '../fit/fitRuns';
import { actionIds, runEndIds, severityIds, visitPurposeIds } from '../kinds/readingWords';
import { sigmaNames } from '../rules/sigmas';
import type { Dice } from './dice';
import { answerOf } from './foundYard';
import { observationNames } from './observationNames';

/** Random edits of visits, runs, readings and what else the fit rests on; null where a site has nothing of the kind. */
export const evidenceEdits: Readonly<Record<string, (dice: Dice) => Site | null>> = {
  addVisit: (d) =>
    addVisit(d.site, { visit: { id: d.newId(), purpose: d.pick(visitPurposeIds), note: d.newId() } }),
  changeVisit: (d) => {
    const visit = d.site.visits.find(() => d.chance(0.7));
    if (visit === undefined) return null;
    const date = d.chance(0.3) ? undefined : d.pick(['2026-05-06', '2026-02-30']);
    return changeVisit(d.site, { id: visit.id, facts: { date, purpose: d.pick(visitPurposeIds) } });
  },
  removeVisit: (d) => {
    const visit = d.site.visits.find(() => d.chance(0.5));
    return visit === undefined ? null : removeVisit(d.site, { id: visit.id });
  },
  removeRun: (d) => {
    const run = d.site.runs.find(() => d.chance(0.2));
    return run === undefined ? null : removeThing(d.site, { id: run.id, places: d.places });
  },
  changeRunFacts: (d) => {
    const run = d.site.runs.find(() => d.chance(0.5));
    if (run === undefined) return null;
    return changeRun(d.site, {
      id: run.id,
      facts: {
        visit: d.pick([null, ...d.site.visits.map((v) => v.id), 'gone']),
        zero: { at: 'point', counter: d.upTo(3, 10_000), point: d.point() },
        scale: { by: 'calibration', counted: 1 + d.upTo(9, 10_000), actual: 1 + d.upTo(9, 10_000) },
        head: { length: d.upTo(0.3, 5), zeroed: d.pick(['lens', 'tail']) },
        ended: d.pick(runEndIds),
      },
    });
  },
  addReadings: (d) => {
    const run = d.site.runs.find(() => d.chance(0.5));
    if (run === undefined) return null;
    const first = nextReadingNumber(run);
    const readings = [0, 1].map(
      (i): Reading => ({
        id: d.newId(),
        number: first + i,
        counter: d.upTo(30, 10_000),
        seen: 'roots',
        passed: true,
        note: '',
      }),
    );
    return addReadings(d.site, { run: run.id, readings });
  },
  changeReadingFacts: (d) => {
    const found = someReading(d);
    if (found === null) return null;
    return changeReading(d.site, {
      run: found.run.id,
      id: found.reading.id,
      facts: {
        to: d.upTo(40, 10_000),
        severity: d.pick(severityIds),
        action: d.pick(actionIds),
        water: d.upTo(1, 1),
        videoAt: d.upTo(3600, 86_400),
        seenAt: d.point(),
        ground: { state: d.pick(['painted', 'dug']) },
        offset: { azimuth: d.azimuth(), distance: 0.1 + d.upTo(3, 100) },
      },
    });
  },
  moveReading: (d) => {
    const found = someReading(d);
    if (found === null) return null;
    const to = Math.floor(d.random() * found.run.readings.length);
    return moveReading(d.site, { run: found.run.id, id: found.reading.id, to });
  },
  sortReadings: (d) => {
    const run = d.site.runs.find(() => d.chance(0.7));
    return run === undefined ? null : sortReadings(d.site, { run: run.id });
  },
  removeReading: (d) => {
    const found = someReading(d);
    return found === null ? null : removeReading(d.site, { run: found.run.id, id: found.reading.id });
  },
  addPair: (d) => {
    const [a, b] = [someReading(d), someReading(d)];
    if (a === null || b === null) return null;
    return addPair(d.site, { pair: { id: d.newId(), a: refOf(a), b: refOf(b) } });
  },
  tellApart: (d) => {
    const [a, b] = [someReading(d), someReading(d)];
    if (a === null || b === null) return null;
    return tellApart(d.site, { pair: { id: d.newId(), a: refOf(a), b: refOf(b) } });
  },
  removePair: (d) => {
    const pair = d.site.pairs.find(() => d.chance(0.7));
    return pair === undefined ? null : removePair(d.site, { id: pair.id });
  },
  tieLocate: (d) => {
    const locate = d.site.features.find((f) => f.kind === 'locate' && d.chance(0.5));
    const found = someReading(d);
    if (locate === undefined || found === null) return null;
    const value = d.chance(0.2) ? undefined : d.pick([refOf(found), { run: 'gone', reading: 'gone' }]);
    return setField(d.site, { id: locate.id, field: 'reading', value });
  },
  changePathPoint: (d) => {
    const path = d.pick(d.site.paths);
    const level: PipeLevel | undefined = d.chance(0.3)
      ? undefined
      : d.pick([
          { is: 'invert', level: d.upTo(30, 20_000) },
          { is: 'depth-to-top', depth: d.upTo(2, 50), sigma: 0.01 + d.upTo(0.1, 10) },
        ]);
    const facts = { bend: d.upTo(1.5, Math.PI), level };
    return changePathVertex(d.site, { id: path.id, at: d.pick(path.vertices).id, facts });
  },
  setKnownLength: (d) => {
    const path = d.pick(d.site.paths);
    const [from, to] = [d.pick(path.vertices).id, d.pick(path.vertices).id];
    const known = { id: d.newId(), from, to, length: d.upTo(20, 1e6) };
    return setKnownLength(d.site, { id: path.id, known });
  },
  removeKnownLength: (d) => {
    const path = d.pick(d.site.paths);
    const known = path.knownLengths?.[0];
    return known === undefined ? null : removeKnownLength(d.site, { id: path.id, known: known.id });
  },
  setSigma: (d) =>
    setSigma(d.site, {
      name: d.pick(sigmaNames),
      value: d.chance(0.3) ? undefined : d.upTo(0.5, 1000),
    }),
  takeFit: (d) => {
    const fit = fitRuns(d.site, derive(d.site));
    return fit === null || fit.status !== 'fitted' ? null : takeFit(d.site, { fit, places: d.places });
  },
  dropFit: (d) => dropFit(d.site, { places: d.places }),
  addAsFound: (d) => addAsFound(d.site, { found: someFind(d) }),
  changeAsFound: (d) => {
    const found = d.site.asFound.find(() => d.chance(0.7));
    if (found === undefined) return null;
    const { where, depth } = someFind(d);
    return changeAsFound(d.site, { id: found.id, facts: { where, depth } });
  },
  removeAsFound: (d) => {
    const found = d.site.asFound.find(() => d.chance(0.5));
    return found === undefined ? null : removeAsFound(d.site, { id: found.id });
  },
  mergeAnswer: (d) =>
    mergeAnswer(d.site, { answer: answerOf({ id: d.newId(), found: [someFind(d), someFind(d)] }) }),
  weighFind: (d) => {
    const derived = derive(d.site);
    const one = derived.found.find((f) => canWeigh(d.site, f));
    return one === undefined ? null : weighFind(d.site, { id: one.record.id, name: '', derived });
  },
  makeAsBuilt: (d) => {
    const derived = derive(d.site);
    const path = [...derived.paths.keys()].find(() => d.chance(0.7));
    return path === undefined ? null : makeAsBuilt(d.site, { path, id: d.newId(), name: '', derived });
  },
  setAside: (d) => setAside(d.site, { observation: d.pick(observationNames(d.site)), aside: d.chance(0.6) }),
};

type Found = { readonly run: Run; readonly reading: Reading };

function someReading(d: Dice): Found | null {
  const runs = d.site.runs.filter((r) => r.readings.length > 0);
  if (runs.length === 0) return null;
  const run = d.pick(runs);
  return { run, reading: d.pick(run.readings) };
}

function refOf({ run, reading }: Found): ReadingRef {
  return { run: run.id, reading: reading.id };
}

function someFind(d: Dice): FoundReport {
  const reading = someReading(d);
  return {
    id: d.newId(),
    about:
      reading === null ? { is: 'place' } : { is: 'mark', run: reading.run.id, reading: reading.reading.id },
    state: d.pick(foundStates),
    by: '',
    at: d.pick(['2026-05-20T12:00:00-05:00', '2026-05-21T12:00:00Z']),
    given: {
      label: 'A1',
      at: d.place(),
      flow: d.azimuth(),
      ties: [{ from: d.point(), distance: 0.1 + d.upTo(20, 1e6) }],
      side: 'left',
    },
    where: d.pick<FoundWhere>([
      { by: 'paint', along: d.upTo(2, 1000), right: -d.upTo(2, 1000) },
      {
        by: 'tapes',
        tapes: [d.point(), d.point()].map((from) => ({ from, distance: 0.1 + d.upTo(20, 1e6) })),
        side: 'right',
      },
      { by: 'coordinates', ...d.place() },
    ]),
    depth: { to: 'top', depth: d.upTo(2, 50) },
    note: '',
    photos: [],
  };
}
