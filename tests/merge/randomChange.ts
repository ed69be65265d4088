import {
  addAsFound,
  addDig,
  addFeature,
  addPair,
  addReading,
  addRun,
  addSiteNote,
  addVisit,
  changeAsFound,
  changeReading,
  changeRule,
  changeRun,
  changeSite,
  foundStates,
  freeRunLetter,
  freeVertexId,
  insertVertex,
  moveReading,
  nameFeature,
  type Run,
  removeAsFound,
  removeReading,
  removeThing,
  removeVisit,
  resolvePoints,
  ruleNames,
  type Site,
  type Spot,
  setAside,
  setSigma,
  setSpot,
  soundEdit,
} from '@footmark/site';
import type { Dice } from '../random/dice';

type Change = (site: Site, dice: Dice) => Site | null;

const spot = (site: Site, { pick, next }: Dice): Spot => {
  const owner = pick([...site.features, ...site.paths]);
  const from = { of: owner.id, at: pick<{ id: string }>(owner.vertices).id };
  return pick<Spot>([
    { by: 'coordinates', x: next() * 40, y: next() * 40 },
    { by: 'bearing', from, azimuth: next() * 6, distance: 1 + next() * 9 },
    { by: 'at', point: from },
  ]);
};

const someRun = ({ runs }: Site, { pick }: Dice): Run | null => (runs.length === 0 ? null : pick(runs));

/** Edits as people make them, each on a thing drawn by the dice; null where a site has nothing to do it on. */
const changes: Readonly<Record<string, Change>> = {
  addFeature: (site, dice) =>
    addFeature(site, {
      feature: {
        id: dice.id('f'),
        kind: dice.pick(['tree', 'pole', 'cleanout'] as const),
        name: '',
        vertices: [{ id: 'a', spot: spot(site, dice) }],
        fields: {},
      },
    }),
  nameFeature: (site, dice) =>
    site.features.length === 0
      ? null
      : nameFeature(site, { id: dice.pick(site.features).id, name: dice.id('name ') }),
  removeThing: (site, dice) =>
    site.features.length < 3
      ? null
      : removeThing(site, {
          id: dice.pick([...site.features, ...site.paths.slice(1), ...site.runs]).id,
          places: resolvePoints(site).points,
        }),
  setSpot: (site, dice) => {
    const owner = dice.pick([...site.features, ...site.paths]);
    const at = dice.pick<{ id: string }>(owner.vertices).id;
    return setSpot(site, { ref: { of: owner.id, at }, spot: spot(site, dice) });
  },
  insertVertex: (site, dice) => {
    const path = site.paths[0];
    if (path === undefined) return null;
    const vertex = { id: freeVertexId(path.vertices), spot: spot(site, dice) };
    const { points } = resolvePoints(site);
    return insertVertex(site, {
      ref: { of: path.id, at: path.vertices[0]?.id ?? '' },
      vertex,
      places: points,
    });
  },
  addRun: (site, dice) => {
    const like = someRun(site, dice);
    if (like === null) return null;
    const run = { ...like, id: dice.id('r'), letter: freeRunLetter(site.runs), branches: [], readings: [] };
    return addRun(site, { run });
  },
  changeRun: (site, dice) => {
    const run = someRun(site, dice);
    if (run === null) return null;
    const visit = dice.pick([null, ...site.visits.map((v) => v.id)]);
    return changeRun(site, { id: run.id, facts: { note: dice.id('note '), visit } });
  },
  addReading: (site, dice) => {
    const run = someRun(site, dice);
    if (run === null) return null;
    const counter = dice.next() * 30;
    const reading = { id: dice.id('x'), number: 7, counter, seen: 'crack', passed: true, note: '' } as const;
    return addReading(site, { run: run.id, reading });
  },
  changeReading: onReading((site, run, id, { next }) =>
    changeReading(site, { run, id, facts: { counter: next() * 30 } }),
  ),
  moveReading: onReading((site, run, id) => moveReading(site, { run, id, to: 0 })),
  removeReading: onReading((site, run, id) => removeReading(site, { run, id })),
  addPair: onReading((site, run, reading, dice) => {
    const other = site.runs.find((r) => r.id !== run && r.readings.length > 0);
    if (other === undefined) return null;
    const b = { run: other.id, reading: dice.pick(other.readings).id };
    return addPair(site, { pair: { id: dice.id('p'), a: { run, reading }, b } });
  }),
  addDig: onReading((site, run, reading, dice) =>
    addDig(site, { dig: { id: dice.id('d'), is: 'pit', at: { run, reading }, name: '', note: '' } }),
  ),
  addVisit: (site, dice) =>
    addVisit(site, { visit: { id: dice.id('v'), purpose: 'other', note: dice.id('') } }),
  removeVisit: (site, dice) =>
    site.visits.length === 0 ? null : removeVisit(site, { id: dice.pick(site.visits).id }),
  addSiteNote: (site, dice) =>
    addSiteNote(site, { note: { id: dice.id('n'), at: '2026-03-04T05:06:07Z', text: dice.id('') } }),
  addAsFound: onReading((site, run, reading, dice) => {
    const owner = dice.pick([...site.features, ...site.paths]);
    const from = { of: owner.id, at: dice.pick<{ id: string }>(owner.vertices).id };
    return addAsFound(site, {
      found: {
        id: dice.id('w'),
        about: { is: 'mark', run, reading },
        state: dice.pick(foundStates),
        by: dice.id(''),
        at: '2026-03-04T05:06:07-06:00',
        given: { label: 'A1', at: { x: 1, y: 2 }, flow: 1, ties: [{ from, distance: 3 }], side: 'left' },
        where: { by: 'paint', along: dice.next() - 0.5, right: dice.next() - 0.5 },
        note: '',
        photos: [],
      },
    });
  }),
  changeAsFound: (site, dice) => {
    if (site.asFound.length === 0) return null;
    const { id, photos } = dice.pick(site.asFound);
    const facts = dice.pick([
      { note: dice.id('note ') },
      { photos: [...photos, dice.id('i')] },
      { where: undefined },
    ]);
    return changeAsFound(site, { id, facts });
  },
  removeAsFound: (site, dice) =>
    site.asFound.length === 0 ? null : removeAsFound(site, { id: dice.pick(site.asFound).id }),
  setSigma: (site, { pick, next }) =>
    setSigma(site, {
      name: pick(['counter', 'zero', 'scale'] as const),
      value: pick([undefined, 0.01 + next()]),
    }),
  setAside: (site, { pick, next }) =>
    setAside(site, { observation: pick(['one', 'two', 'three']), aside: next() < 0.7 }),
  changeRule: (site, { pick, next, id }) =>
    changeRule(site, { change: { rule: pick(ruleNames), value: next(), who: id(''), why: '' } }),
  changeSite: (site, dice) => changeSite(site, { [dice.pick(['name', 'address', 'note'])]: dice.id('') }),
};

function onReading(change: (site: Site, run: string, reading: string, dice: Dice) => Site | null): Change {
  return (site, dice) => {
    const runs = site.runs.filter((r) => r.readings.length > 0);
    if (runs.length === 0) return null;
    const run = dice.pick(runs);
    return change(site, run.id, dice.pick(run.readings).id, dice);
  };
}

const names = Object.keys(changes);

/** The site after one random edit that can be kept; the site itself when ten tries gave none. */
export function randomChange(site: Site, dice: Dice): Site {
  for (let tries = 0; tries < 10; tries++) {
    const changed = changes[dice.pick(names)]?.(site, dice) ?? null;
    const sound = changed === null ? null : soundEdit(site, changed);
    if (sound?.ok) return sound.site;
  }
  return site;
}
