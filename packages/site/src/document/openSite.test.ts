import { describe, expect, it } from 'vitest';
import { DEGREE, pipe, push, ref, tee, thing, typed, yard } from '../testing/yard';
import { MOST_SITE_CHARACTERS, type OpenFailure, openSite, openSiteValue, writeSite } from './openSite';
import { SITE_VERSION, type Site } from './site';

/** The failure of a text that must not open. */
function refused(text: string): OpenFailure {
  const opened = openSite(text);
  if (opened.ok) return expect.fail('it opened');
  return opened.failure;
}

/** The problems of a sound site with another value at a place in it; undefined takes it out. */
function problemsWith(place: string, value: unknown) {
  const site: unknown = JSON.parse(writeSite(sound()));
  const keys = place.split('.');
  let holder = site;
  for (const key of keys.slice(0, -1)) holder = Reflect.get(holder as object, key);
  Reflect.set(holder as object, keys.at(-1) ?? '', value);
  const failure = refused(JSON.stringify(site));
  if (failure.code !== 'invalid') return expect.fail(failure.code);
  return failure.problems.map((p) => [p.code, p.path.join('.')]);
}

function sound(): Site {
  const { features, paths } = tee();
  return yard({ features, paths, runs: [push({ entry: 'head', path: 'main' }, [3, 4])] });
}

describe('a site file', () => {
  it('opens as it was written', () => {
    expect(openSite(writeSite(sound()))).toEqual({ ok: true, site: sound(), migratedFrom: null });
    expect(openSiteValue(sound())).toEqual({ ok: true, site: sound(), migratedFrom: null });
  });

  it('ends in one newline and is indented for people', () => {
    expect(writeSite(yard())).toMatch(/^{\n {2}"format": "footmark-site",\n[\s\S]*}\n$/);
  });
});

describe('a text that is not a site file', () => {
  it('is not JSON: says where, and shows the place', () => {
    const cut = refused('{"format": "footmark-site",, "version": 1}');
    expect(cut).toMatchObject({ code: 'not-json', position: 27 });
    expect(refused('')).toMatchObject({ code: 'not-json' });
    expect(refused('<html>')).toMatchObject({ code: 'not-json' });
  });

  it.each(['NaN', 'Infinity', '-Infinity'])(
    'holds %s, which JSON does not have: says at which place',
    (word) => {
      expect(refused(writeSite(yard()).replace(/"entryReach": [\d.]+/, `"entryReach": ${word}`))).toEqual({
        code: 'invalid',
        problems: [{ code: 'wrong-value', path: ['entryReach'], detail: word }],
        more: 0,
      });
    },
  );

  it.each(['null', '[]', '7', '"footmark-site"', '{}', '{"format": "other", "version": 1}'])(
    '%s is JSON but no site',
    (text) => {
      expect(refused(text)).toEqual({ code: 'not-a-site' });
    },
  );

  it('is of a newer version: refused by the number, whatever is in it', () => {
    expect(refused(`{"format": "footmark-site", "version": ${SITE_VERSION + 1}, "new": []}`)).toEqual({
      code: 'newer-version',
      version: SITE_VERSION + 1,
      known: SITE_VERSION,
    });
  });

  it.each(['0', '-1', '1.5', '"1"', 'null'])('has %s for a version', (version) => {
    expect(refused(`{"format": "footmark-site", "version": ${version}}`)).toMatchObject({
      code: 'invalid',
      problems: [{ code: 'wrong-value', path: ['version'] }],
    });
  });

  it('is too large: refused before it is parsed', () => {
    const text = `{"format": "footmark-site", "note": "${'x'.repeat(21_000_000)}`; // not even JSON
    const start = performance.now();
    expect(refused(text)).toMatchObject({ code: 'too-large', most: MOST_SITE_CHARACTERS });
    expect(performance.now() - start).toBeLessThan(100);
  });

  it('nests 100,000 deep, as a whole or in any part', () => {
    const lists = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    const objects = `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`;
    for (const nest of [lists, objects]) {
      expect(refused(nest).code).toMatch(/not-a-site|not-json/);
      for (const part of [
        '"units": {',
        '"spot": {',
        '"vertices": [',
        '"features": [',
        '"entryReach": 0.9144000000000001',
      ]) {
        const text = writeSite(sound()).replace(part, `"deep": ${nest}, ${part}`);
        expect(text).toContain('"deep"');
        expect(refused(text).code).toMatch(/invalid|not-json/);
        const inside = writeSite(sound()).replace(
          part,
          `${part.slice(0, part.indexOf(':') + 1)} ${nest}, "was": ${part.slice(part.indexOf(':') + 1)}`,
        );
        expect(refused(inside).code).toMatch(/invalid|not-json/);
      }
    }
  });
});

describe('a site file with something wrong in it', () => {
  it.each(['colour', 'units.colour', 'features.0.colour', 'features.0.fields.trunkDiameter'])(
    'is told of the unknown field %s',
    (place) => {
      expect(problemsWith(place, 1)).toEqual([['unknown-field', place]]);
    },
  );

  it.each([
    ['frame', 'up'],
    ['frame', null],
    ['frame.north.by', 'guess'],
    ['entryReach', null],
    ['entryReach', -1],
    ['underlays', {}],
    ['createdAt', 'yesterday'],
    ['units.length', 'yard'],
    ['features', {}],
    ['features.0.kind', 'castle'],
    ['features.0.vertices', []],
    ['features.0.id', 'a b'],
    ['features.0.fields.ways', 'three-way'],
    ['features.0.vertices.0.spot.by', 'guess'],
    ['features.0.vertices.0.spot.x', 1e300],
    ['paths.0.stretches', []],
    ['paths.0.vertices.1.drop', -1],
    ['runs.0.letter', 'a'],
    ['runs.0.zero.at', 'somewhere'],
    ['runs.0.scale', 0],
    ['runs.0.scale.factor', 0],
    ['runs.0.head.zeroed', 'middle'],
    ['runs.0.readings.1.water', 1.01],
    ['runs.0.readings.1.severity', 'dreadful'],
    ['paths.0.vertices.1.bend', 3.2],
    ['paths.0.vertices.1.level', 2],
    ['runs.0.readings.1.seen', 'ghost'],
    ['runs.0.readings.1.passed', 'yes'],
  ])('is told that %s cannot be %j', (place, value) => {
    expect(problemsWith(place, value)).toEqual([['wrong-value', place]]);
  });

  it.each([
    'frame',
    'entryReach',
    'underlays',
    'features.0.name',
    'features.0.vertices.0.spot.y',
    'runs.0.readings.1.passed',
  ])('is told that %s is missing', (place) => {
    expect(problemsWith(place, undefined)).toEqual([['missing', place]]);
  });

  it.each([
    [{ by: 'course', azimuth: 7, distance: 1 }, 'azimuth'],
    [{ by: 'bearing', from: ref('head'), azimuth: 1, distance: -1 }, 'distance'],
    [{ by: 'turn', turn: 4, distance: 1 }, 'turn'],
    [{ by: 'between', from: ref('head'), to: ref('end'), fraction: 11 }, 'fraction'],
    [{ by: 'tapes', tapes: [{ from: ref('head'), distance: 3 }], side: 'left' }, 'tapes'],
  ])('is told that a spot cannot be %j', (spot, field) => {
    expect(problemsWith('features.2.vertices.0.spot', spot)).toEqual([
      ['wrong-value', `features.2.vertices.0.spot.${field}`],
    ]);
  });

  it('lists twenty problems and counts the others', () => {
    const site = { ...sound(), features: Array.from({ length: 30 }, () => 5) };
    expect(openSiteValue(site)).toMatchObject({ ok: false, failure: { code: 'invalid', more: 10 } });
  });
});

describe('a site that is not sound', () => {
  const brokenBy = (parts: Parameters<typeof yard>[0]) => {
    const opened = openSiteValue(yard(parts));
    if (opened.ok || opened.failure.code !== 'invalid') return expect.fail(JSON.stringify(opened));
    return opened.failure.problems.map((p) => [p.code, p.path.join('.'), p.detail]);
  };

  it('measures from a point that is not there', () => {
    const lost = thing('lost', 'note', [{ by: 'at', point: ref('head', 'z') }]);
    expect(brokenBy({ ...tee(), features: [...tee().features, lost] })).toEqual([
      ['unknown-point', 'features.3.vertices.0.spot', 'head/z'],
    ]);
  });

  it('runs from, along and into things that are not there', () => {
    expect(brokenBy({ ...tee(), runs: [push({ entry: 'gone', path: 'lost', branches: ['off'] })] })).toEqual([
      ['unknown-entry', 'runs.0.entry', 'gone'],
      ['unknown-path', 'runs.0.path', 'lost'],
      ['unknown-path', 'runs.0.branches.0', 'off'],
    ]);
  });

  it('zeroes at and sees points, belongs to visits, and names readings that are not there', () => {
    const run = push({ visit: 'never', zero: { at: 'point', counter: 0, point: ref('main', 'q') } }, [
      3,
      { counter: 4, seenAt: ref('lost') },
    ]);
    const found = thing('found', 'locate', [typed(1, 1)], { reading: { run: 'run', reading: 'r9' } });
    const pairs = [{ id: 'p', a: { run: 'run', reading: 'r1' }, b: { run: 'gone', reading: 'r2' } }];
    expect(brokenBy({ ...tee(), features: [...tee().features, found], runs: [run], pairs })).toEqual([
      ['unknown-point', 'runs.0.zero.point', 'main/q'],
      ['unknown-point', 'runs.0.readings.1.seenAt', 'lost/a'],
      ['unknown-visit', 'runs.0.visit', 'never'],
      ['unknown-reading', 'pairs.0.b', 'gone/r2'],
      ['unknown-reading', 'features.3.fields.reading', 'run/r9'],
    ]);
  });

  it('has visits, pairs or known lengths of one name', () => {
    const visit = { id: 'v', purpose: 'other', note: '' } as const;
    expect(brokenBy({ visits: [visit, { ...visit, note: 'again' }] })).toEqual([
      ['duplicate-id', 'visits.1.id', 'v'],
    ]);
    const runs = [push({}, [1, 2])];
    const pair = { id: 'p', a: { run: 'run', reading: 'r1' }, b: { run: 'run', reading: 'r2' } };
    expect(brokenBy({ runs, pairs: [pair, pair] })).toEqual([['duplicate-id', 'pairs.1.id', 'p']]);
    const knownLengths = ['b', 'c'].map((to) => ({ id: 'k', from: 'a', to, length: 9 }));
    const spots = [typed(0, 0), typed(9, 0), typed(18, 0)];
    expect(brokenBy({ paths: [pipe('line', spots, { knownLengths })] })).toEqual([
      ['duplicate-id', 'paths.0.knownLengths.1.id', 'k'],
    ]);
  });

  it('has a name twice: of things, of corners, of readings in two runs', () => {
    const { features, paths } = tee();
    expect(brokenBy({ features, paths: [...paths, pipe('head', [typed(0, 0), typed(1, 1)])] })).toEqual([
      ['duplicate-id', 'paths.2.id', 'head'],
    ]);
    const twice = thing('line', 'fence', [typed(0, 0), typed(1, 1)]);
    const vertices = twice.vertices.map((v) => ({ ...v, id: 'a' }));
    expect(brokenBy({ features: [{ ...twice, vertices } as typeof twice] })).toEqual([
      ['duplicate-id', 'features.0.vertices.1.id', 'a'],
    ]);
    expect(brokenBy({ runs: [push({}, [1]), push({ id: 'other' }, [1])] })).toEqual([
      ['duplicate-id', 'runs.1.readings.0.id', 'r1'],
    ]);
  });

  it('counts from a vertex before the first', () => {
    const course = { by: 'course', azimuth: 0, distance: 1 } as const;
    const turn = { by: 'turn', turn: 90 * DEGREE, distance: 1 } as const;
    expect(brokenBy({ features: [thing('a', 'fence', [course, typed(1, 1)])] })).toEqual([
      ['nothing-before', 'features.0.vertices.0.spot', 'a'],
    ]);
    expect(brokenBy({ features: [thing('a', 'fence', [typed(0, 0), turn])] })).toEqual([
      ['nothing-before', 'features.0.vertices.1.spot', 'b'],
    ]);
  });

  it('measures points from one another, also round a turn', () => {
    const ring = [
      thing('p', 'note', [{ by: 'at', point: ref('q') }]),
      thing('q', 'note', [{ by: 'bearing', from: ref('p'), azimuth: 0, distance: 1 }]),
    ];
    expect(brokenBy({ features: ring })[0]?.[0]).toBe('depends-on-itself');
    const wall = thing('wall', 'fence', [
      { by: 'at', point: ref('wall', 'c') },
      typed(0, 5),
      { by: 'turn', turn: 90 * DEGREE, distance: 2 },
    ]);
    expect(brokenBy({ features: [wall] })[0]?.[0]).toBe('depends-on-itself');
  });

  it('joins a path to itself, or two to each other', () => {
    const self = pipe('p', [typed(0, 0), typed(5, 0), { by: 'at', point: ref('p', 'a') }]);
    expect(brokenBy({ paths: [self] })).toEqual([['joins-itself', 'paths.0.vertices', 'p']]);
    const pair = [
      pipe('p', [typed(0, 0), { by: 'at', point: ref('q', 'a') }]),
      pipe('q', [typed(5, 0), { by: 'at', point: ref('p', 'a') }]),
    ];
    expect(brokenBy({ paths: pair }).map((p) => p[0])).toEqual(['joins-itself']);
  });

  it('has stretches out of order, or none from the start', () => {
    const clay = { material: 'clay', diameter: 0.1, slope: 0 } as const;
    const withStretches = (...from: readonly number[]) => ({
      paths: [pipe('p', [typed(0, 0), typed(9, 0)], { stretches: from.map((f) => ({ from: f, ...clay })) })],
    });
    expect(brokenBy(withStretches(1))).toEqual([['stretches-out-of-order', 'paths.0.stretches.0.from', '1']]);
    expect(brokenBy(withStretches(0, 4, 4))).toEqual([
      ['stretches-out-of-order', 'paths.0.stretches.2.from', '4'],
    ]);
  });
});
