import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Site } from '../document/site';
import { observationNames } from '../testing/observationNames';
import { push, ref, tee, thing, typed, yard } from '../testing/yard';
import { removePair, tellApart } from './pairEdits';
import { removeKnownLength, setKnownLength } from './pathEdits';
import { removeThing } from './removeThing';
import { removeReading } from './runEdits';
import { removeVertex } from './vertexEdits';

const a = { run: 'run', reading: 'r1' };
const b = { run: 'up', reading: 'u1' };
const bare = yard({
  ...tee(),
  features: [...tee().features, thing('l1', 'locate', [typed(3, 1)], { reading: a })],
  runs: [
    push({ entry: 'head', path: 'main' }, [3, 7]),
    push({ id: 'up', letter: 'B', entry: 'end', path: 'main', direction: 'against-flow' }, [
      { id: 'u1', counter: 17 },
    ]),
  ],
  pairs: [{ id: 'p1', a, b }],
});
const measured = [
  { id: 'k1', from: 'a', to: 'b', length: 10 },
  { id: 'k2', from: 'a', to: 'c', length: 20 },
].reduce((s, known) => setKnownLength(s, { id: 'main', known }), bare);
const site: Site = { ...measured, setAside: [...observationNames(measured)] };
const { points: places } = derive(site);

const dropped = (left: Site) => site.setAside.filter((name) => !left.setAside.includes(name));

type Row = readonly [what: string, edit: (site: Site) => Site, names: readonly string[]];

/** What goes, and the names that go with it, written out here as they stand in files. */
const rows: readonly Row[] = [
  ['a locate', (s) => removeThing(s, { id: 'l1', places }), ['locate/l1']],
  [
    'a reading with its pair, and not its locate',
    (s) => removeReading(s, { run: 'run', id: 'r1' }),
    ['counter/run/r1', 'seen/run/r1', 'pair/p1'],
  ],
  [
    'a run with its readings and their pair',
    (s) => removeThing(s, { id: 'up', places }),
    ['scale/up', 'zero/up', 'riser/up', 'counter/up/u1', 'seen/up/u1', 'pair/p1'],
  ],
  ['a pair', (s) => removePair(s, { id: 'p1' }), ['pair/p1']],
  ['a pair that is told apart', (s) => tellApart(s, { pair: { id: 'q', a: b, b: a } }), ['pair/p1']],
  ['a known length', (s) => removeKnownLength(s, { id: 'main', known: 'k1' }), ['length/main/k1']],
  [
    'a known length that another takes the place of',
    (s) => setKnownLength(s, { id: 'main', known: { id: 'k3', from: 'c', to: 'a', length: 20.2 } }),
    ['length/main/k2'],
  ],
  [
    'a point of a pipe with the length that ended there',
    (s) => removeVertex(s, { ref: ref('main', 'b'), places }),
    ['point/main/b', 'leg/main/b', 'stray/main/b', 'bend/main/b', 'length/main/k1'],
  ],
  [
    'a pipe with its points and lengths',
    (s) => removeThing(s, { id: 'branch', places }),
    ['a', 'b'].flatMap((v) => ['point', 'leg', 'stray', 'bend'].map((is) => `${is}/branch/${v}`)),
  ],
];

describe('what is set aside', () => {
  it.each(rows)('is forgotten of %s, and of nothing else', (_, edit, names) => {
    const left = edit(site);
    expect(dropped(left).toSorted()).toEqual(names.toSorted());
    expect(left.setAside).toEqual(site.setAside.filter((name) => !names.includes(name)));
  });

  it('is the same list when what goes was not set aside', () => {
    const few: Site = { ...site, setAside: ['pair/p1'] };
    expect(removeThing(few, { id: 'l1', places }).setAside).toBe(few.setAside);
  });
});
