import { readFileSync } from 'node:fs';
import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { resolvePoints } from '../derive/resolvePoints';
import { dependsOn } from '../document/dependsOn';
import type { Feature } from '../document/feature';
import { openSite, writeSite } from '../document/openSite';
import { fewestVertices, isPath, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { LegSpot, Spot } from '../document/spot';
import { tagOfName } from '../fit/tagOfName';
import { Dice, seeded } from '../testing/dice';
import { evidenceEdits } from '../testing/evidenceEdits';
import { observationNames } from '../testing/observationNames';
import { DEGREE, thing } from '../testing/yard';
import { copyThings, isSelfContained, pasteThings } from './copyThings';
import { addFeature, setBalance, setClosing, setField } from './featureEdits';
import { addControl, setNorth } from './frameEdits';
import type { Places } from './holdPlaces';
import { changePath, changePathVertex, removeStretch, setStretch } from './pathEdits';
import { removeThing } from './removeThing';
import { changeReading, changeRun } from './runEdits';
import { setLegLength } from './setLegLength';
import { changeSite } from './siteEdits';
import { soundEdit } from './soundEdit';
import { splitLeg } from './splitLeg';
import { alignThings, rotateThings } from './thingEdits';
import { freeVertexId, insertVertex, movePoint, moveThings, removeVertex, setSpot } from './vertexEdits';

const SEQUENCES = 120; // for each sample
const EDITS = 4; // in each sequence

/** Milliseconds: some ten times what it takes, for a machine that is busy. */
const PATIENCE_MS = 60_000;

/** Metres that a point which an edit promises to leave may move by rounding. */
const ROUNDING_M = 1e-6;

/** The edits, by name; null where one does not apply to the thing in hand. */
const edits: Readonly<Record<string, (dice: Dice) => Site | null>> = {
  ...evidenceEdits,
  movePoint: (d) => movePoint(d.site, { ref: d.ref, to: d.place(), places: d.places }),
  insertVertex: (d) =>
    d.isPoint()
      ? null
      : insertVertex(d.site, {
          ref: d.ref,
          vertex: { id: freeVertexId(d.owner.vertices), spot: { by: 'finger', ...d.place() } },
          places: d.places,
        }),
  splitLeg: (d) =>
    d.isPoint() || (!d.isArea() && d.owner.vertices.at(-1) === d.vertex)
      ? null
      : splitLeg(d.site, { after: d.ref, id: freeVertexId(d.owner.vertices), places: d.places }),
  removeVertex: (d) =>
    d.owner.vertices.length > fewestVertices(d.owner)
      ? removeVertex(d.site, { ref: d.ref, places: d.places })
      : null,
  removeThing: (d) => (d.chance(0.5) ? removeThing(d.site, { id: d.owner.id, places: d.places }) : null),
  setSpot: (d) => setSpot(d.site, { ref: d.ref, spot: d.spot() }),
  setLeg: (d) => setSpot(d.site, { ref: d.ref, spot: d.leg() }),
  setLegLength: (d) => {
    if (d.isPoint() || (!d.isArea() && d.owner.vertices[0] === d.vertex)) return null;
    const keeps = d.pick(['start', 'end'] as const);
    const args = { of: d.owner.id, end: d.vertex.id, distance: d.upTo(20, 1e6), keeps, places: d.places };
    const done = setLegLength(d.site, args);
    return done.ok ? done.site : null;
  },
  setClosing: (d) =>
    d.isArea() ? setClosing(d.site, { id: d.owner.id, closing: d.chance(0.2) ? undefined : d.leg() }) : null,
  setBalance: (d) =>
    d.isArea()
      ? setBalance(d.site, { id: d.owner.id, balance: d.chance(0.7) ? 'compass' : undefined })
      : null,
  moveThings: (d) => moveThings(d.site, { ids: [d.owner.id, d.point().of], by: d.place() }),
  rotateThings: (d) =>
    rotateThings(d.site, {
      ids: [...new Set([d.owner.id, d.point().of, d.point().of])],
      about: { x: 5, y: 5 },
      angle: (d.random() - 0.5) * 14,
      places: d.places,
    }),
  alignThings: (d) =>
    alignThings(d.site, { ids: [d.owner.id, d.point().of], axis: d.pick(['x', 'y']), places: d.places }),
  copyThings: (d) => {
    const ids = [...new Set([d.owner.id, d.point().of])];
    const things = copyThings(d.site, ids, d.places);
    expect(isSelfContained(things)).toBe(true);
    return pasteThings(d.site, { things, ids: new Map(ids.map((id) => [id, d.newId()])), by: d.place() });
  },
  setField: (d) =>
    d.owner.id !== 'oak'
      ? null
      : setField(d.site, { id: 'oak', field: 'trunkDiameter', value: d.upTo(2, 100) }),
  changePath: (d) =>
    isPath(d.owner) ? changePath(d.site, { id: d.owner.id, facts: { bendRadius: d.upTo(2, 10) } }) : null,
  changePathVertex: (d) =>
    isPath(d.owner)
      ? changePathVertex(d.site, {
          id: d.owner.id,
          at: d.vertex.id,
          facts: { bendRadius: d.upTo(3, 10), drop: d.upTo(3, 50) },
        })
      : null,
  setStretch: (d) =>
    isPath(d.owner)
      ? setStretch(d.site, {
          id: d.owner.id,
          stretch: {
            from: d.upTo(40, 1e6),
            material: 'clay',
            diameter: d.upTo(0.3, 5),
            slope: d.upTo(0.1, 2),
          },
        })
      : null,
  removeStretch: (d) =>
    isPath(d.owner) ? removeStretch(d.site, { id: d.owner.id, from: d.pick(d.owner.stretches).from }) : null,
  changeRun: (d) => {
    const run = d.site.runs.find(() => d.chance(0.5));
    if (run === undefined) return null;
    const counter = d.upTo(5, 10_000);
    return changeRun(d.site, {
      id: run.id,
      facts: {
        direction: d.pick(['with-flow', 'against-flow']),
        path: d.site.paths.find(() => d.chance(0.5))?.id ?? null,
        branches: d.site.paths.filter(() => d.chance(0.3)).map((p) => p.id),
        zero: d.pick([
          { at: 'rim', counter, riser: d.upTo(3, 100), sweepRadius: d.upTo(0.3, 10) },
          { at: 'in-pipe', counter },
        ]),
        scale: { by: 'said', factor: d.upTo(1.1, 100) },
      },
    });
  },
  changeReading: (d) => {
    const run = d.site.runs.find((r) => r.readings.length > 0 && d.chance(0.7));
    if (run === undefined) return null;
    const { id } = d.pick(run.readings);
    return changeReading(d.site, { run: run.id, id, facts: { counter: d.upTo(40, 10_000) } });
  },
  changeSite: (d) =>
    changeSite(d.site, {
      entryReach: d.upTo(2, 100),
      tape: { length: d.upTo(30, 1000), sigma: d.upTo(0.02, 10) },
    }),
  setNorth: (d) =>
    setNorth(d.site, { north: { by: 'line', from: d.point(), to: d.point(), azimuth: d.azimuth() } }),
  addControl: (d) =>
    addControl(d.site, {
      control: {
        id: d.newId(),
        point: d.point(),
        latitudeDeg: 45 + d.random() / 1000,
        longitudeDeg: d.upTo(180, 180),
        accuracy: d.upTo(5, 10_000),
        source: 'typed',
      },
    }),
};

/** A sample with a line of curves that each go straight on, a balanced outline with a curve, and a tree. */
function start(name: string): Site {
  const text = readFileSync(new URL(`../../samples/${name}.json`, import.meta.url), 'utf8');
  const opened = openSite(text);
  if (!opened.ok) throw new Error(`the sample ${name} does not open`);
  const straightOn = (sweep: number): Spot => ({ by: 'arc', radius: 8, sweep, chord: null });
  const curb = thing('chain', 'curb', [
    { by: 'finger', x: 2, y: 1 },
    { by: 'course', azimuth: 1, distance: 6 },
    straightOn(80 * DEGREE),
    { by: 'turn', turn: 0, distance: 5 },
    straightOn(-120 * DEGREE),
    straightOn(30 * DEGREE),
    { by: 'turn', turn: 0.2, distance: 3 },
  ]);
  const lot = thing('balanced', 'boundary', [
    { by: 'coordinates', x: 0, y: 0 },
    { by: 'course', azimuth: 0, distance: 10 },
    { by: 'arc', radius: 8, sweep: 60 * DEGREE, chord: 90 * DEGREE },
    { by: 'course', azimuth: 180 * DEGREE, distance: 10.4 },
  ]);
  const closing: LegSpot = { by: 'course', azimuth: 270 * DEGREE, distance: 8.1 };
  const oak = thing('oak', 'tree', [{ by: 'finger', x: 4, y: 9 }], { trunkDiameter: 0.5 });
  return [curb, { ...lot, closing, balance: 'compass' } as Feature, oak].reduce(
    (site, feature) => addFeature(site, { feature }),
    opened.site,
  );
}

/** Points of `after` that an edit promises to leave where they were and did not. */
function jumped(name: string, { site, places, ref }: Dice, after: Site, now: Places): readonly string[] {
  const promises = ['movePoint', 'insertVertex', 'splitLeg', 'removeVertex', 'removeThing'];
  if (!promises.includes(name)) return [];
  return pointOwners(site).flatMap((owner) =>
    owner.vertices.flatMap((v) => {
      const here = { of: owner.id, at: v.id };
      const [was, is] = [places.get(refKey(here))?.at, now.get(refKey(here))?.at];
      const mayMove = name === 'movePoint' && dependsOn(after, here, ref);
      return was && is && !mayMove && distance(was, is) > ROUNDING_M ? [refKey(here)] : [];
    }),
  );
}

/** The ways to whatever is not a number in what follows from a site. */
function noNumbers(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isNaN(value) ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  return entries.flatMap(([key, inner]) => noNumbers(inner, `${path}/${key}`));
}

describe.each(['rear-alley', 'front-terrace'])('random edits of %s', (name) => {
  const sample = start(name);

  it(
    'are kept when the file can be read back and only then, what follows from them is a number, and nothing is set aside that is gone',
    () => {
      for (let seed = 1; seed <= SEQUENCES; seed++) {
        const log: string[] = [];
        try {
          runSequence(sample, seed, log);
        } catch (error) {
          throw new Error(`seed ${seed}: ${log.join(', ')}`, { cause: error });
        }
      }
    },
    PATIENCE_MS,
  );
});

function runSequence(sample: Site, seed: number, log: string[]): void {
  const random = seeded(seed);
  // every second time all is set aside, so that whatever goes was
  let site: Site = seed % 2 === 0 ? { ...sample, setAside: [...observationNames(sample)] } : sample;
  let ids = 0;
  let places: Places = resolvePoints(site).points;
  while (log.length < EDITS) {
    const dice = new Dice(site, places, random, () => `new${seed}-${ids++}`);
    const [name, edit] = dice.pick(Object.entries(edits));
    log.push(`${name} ${refKey(dice.ref)}`);
    const edited = edit(dice);
    if (edited === null) continue;
    const sound = soundEdit(site, edited);
    const opened = openSite(writeSite(edited));
    expect(sound.ok, JSON.stringify([sound, opened.ok ? '' : opened.failure]).slice(0, 500)).toBe(opened.ok);
    if (!sound.ok) continue;
    const now = resolvePoints(edited).points;
    expect(jumped(name, dice, edited, now)).toEqual([]);
    expect(edited.setAside.filter((aside) => tagOfName(edited, aside) === null)).toEqual([]);
    [site, places] = [edited, now];
  }
  const { points, features, marks, coverage, findings } = derive(site);
  const bounds = [...features.values()].map((f) => [f.bounds, f.closure]);
  expect(noNumbers({ points, bounds, marks, coverage, findings })).toEqual([]);
}
