import { dependencyOrder } from './dependencyOrder';
import { neededPoints, pointOwners, refKey } from './pointOwners';
import type { Site } from './site';
import { pairLists, readingRefs, refsInFrame, refsInRuns, refsInUnderlays } from './siteRefs';
import { countedFrom, refsOfSpot } from './spot';

/** Something that the shape of the file allows but a site does not. `path` leads to it in the file. */
export type IntegrityProblem = {
  readonly code:
    | 'duplicate-id'
    | 'unknown-point'
    | 'unknown-path'
    | 'unknown-entry'
    | 'unknown-visit'
    | 'unknown-reading'
    | 'paired-with-itself'
    | 'length-to-itself'
    | 'dig-out-of-order'
    | 'nothing-before'
    | 'depends-on-itself'
    | 'joins-itself'
    | 'stretches-out-of-order';
  readonly path: readonly (string | number)[];
  readonly name: string;
};

/** Checks that every name in the site leads to something, once, and that nothing is measured from itself. Empty: sound. */
export function integrityProblems(site: Site): readonly IntegrityProblem[] {
  return [
    ...duplicateIds(site),
    ...spotProblems(site),
    ...danglingRefs(site),
    ...danglingRuns(site),
    ...danglingReadings(site),
    ...danglingLengths(site),
    ...danglingDigs(site),
    ...stretchOrder(site),
  ];
}

function* duplicateIds(site: Site): Generator<IntegrityProblem> {
  const owners = [
    ...site.features.map((f, i) => ({ id: f.id, path: ['features', i] as const })),
    ...site.paths.map((p, i) => ({ id: p.id, path: ['paths', i] as const })),
    ...site.runs.map((r, i) => ({ id: r.id, path: ['runs', i] as const })),
  ];
  yield* repeated(owners);
  yield* repeated(site.underlays.map((u, i) => ({ id: u.id, path: ['underlays', i] })));
  yield* repeated(site.visits.map((v, i) => ({ id: v.id, path: ['visits', i] })));
  for (const list of pairLists) yield* repeated(site[list].map((p, i) => ({ id: p.id, path: [list, i] })));
  yield* repeated(site.digging.digs.map((d, i) => ({ id: d.id, path: ['digging', 'digs', i] })));
  yield* repeated(site.digging.notes.map((n, i) => ({ id: n.id, path: ['digging', 'notes', i] })));
  yield* repeated(site.frame.control.map((c, i) => ({ id: c.id, path: ['frame', 'control', i] })));
  yield* repeated(site.asFound.map((f, i) => ({ id: f.id, path: ['asFound', i] })));
  for (const [i, feature] of site.features.entries()) {
    yield* repeated(feature.vertices.map((v, j) => ({ id: v.id, path: ['features', i, 'vertices', j] })));
  }
  for (const [i, path] of site.paths.entries()) {
    yield* repeated(path.vertices.map((v, j) => ({ id: v.id, path: ['paths', i, 'vertices', j] })));
    yield* repeated(
      (path.knownLengths ?? []).map((l, j) => ({ id: l.id, path: ['paths', i, 'knownLengths', j] })),
    );
  }
  yield* repeated(
    site.runs.flatMap((run, i) =>
      run.readings.map((r, j) => ({ id: r.id, path: ['runs', i, 'readings', j] })),
    ),
  );
}

function* repeated(
  ids: readonly { id: string; path: readonly (string | number)[] }[],
): Generator<IntegrityProblem> {
  const seen = new Set<string>();
  for (const { id, path } of ids) {
    if (seen.has(id)) yield { code: 'duplicate-id', path: [...path, 'id'], name: id };
    seen.add(id);
  }
}

/** Points that are measured from nothing, and what is measured or drawn from itself. */
export function spotProblems(site: Site): readonly IntegrityProblem[] {
  return [...danglingSpots(site), ...circularSpots(site), ...circularJoins(site)];
}

function pointKeys(site: Site): ReadonlySet<string> {
  return new Set(
    pointOwners(site).flatMap((owner) => owner.vertices.map((v) => refKey({ of: owner.id, at: v.id }))),
  );
}

function* danglingSpots(site: Site): Generator<IntegrityProblem> {
  const known = pointKeys(site);
  const lists = [
    ...site.features.map((owner, i) => ({ owner, path: ['features', i] as const })),
    ...site.paths.map((owner, i) => ({ owner, path: ['paths', i] as const })),
  ];
  for (const { owner, path } of lists) {
    for (const [j, v] of owner.vertices.entries()) {
      const here = [...path, 'vertices', j, 'spot'];
      for (const ref of refsOfSpot(v.spot)) {
        if (!known.has(refKey(ref))) yield { code: 'unknown-point', path: here, name: refKey(ref) };
      }
      if (j < countedFrom(v.spot)) {
        yield { code: 'nothing-before', path: here, name: v.id };
      }
    }
  }
}

function* danglingRefs(site: Site): Generator<IntegrityProblem> {
  const known = pointKeys(site);
  for (const { ref, path } of [
    ...refsInFrame(site.frame),
    ...refsInUnderlays(site.underlays),
    ...refsInRuns(site.runs),
  ]) {
    if (!known.has(refKey(ref))) yield { code: 'unknown-point', path, name: refKey(ref) };
  }
}

function* danglingRuns(site: Site): Generator<IntegrityProblem> {
  const features = new Set(site.features.map((f) => f.id));
  const paths = new Set(site.paths.map((p) => p.id));
  const visits = new Set(site.visits.map((v) => v.id));
  for (const [i, run] of site.runs.entries()) {
    if (run.visit !== null && !visits.has(run.visit)) {
      yield { code: 'unknown-visit', path: ['runs', i, 'visit'], name: run.visit };
    }
    if (run.entry !== null && !features.has(run.entry)) {
      yield { code: 'unknown-entry', path: ['runs', i, 'entry'], name: run.entry };
    }
    if (run.path !== null && !paths.has(run.path)) {
      yield { code: 'unknown-path', path: ['runs', i, 'path'], name: run.path };
    }
    for (const [j, branch] of run.branches.entries()) {
      if (!paths.has(branch)) yield { code: 'unknown-path', path: ['runs', i, 'branches', j], name: branch };
    }
  }
}

/** Pairs and locates name readings. */
function* danglingReadings(site: Site): Generator<IntegrityProblem> {
  const known = new Set(site.runs.flatMap((run) => run.readings.map((r) => `${run.id}/${r.id}`)));
  for (const { ref, path } of readingRefs(site)) {
    const name = `${ref.run}/${ref.reading}`;
    if (!known.has(name)) yield { code: 'unknown-reading', path, name };
  }
  for (const list of pairLists) {
    for (const [i, { a, b }] of site[list].entries()) {
      if (a.reading === b.reading) yield { code: 'paired-with-itself', path: [list, i], name: a.reading };
    }
  }
}

/** Digs stand at readings and on pipes; a trench begins before it ends. */
function* danglingDigs(site: Site): Generator<IntegrityProblem> {
  const readings = new Set(site.runs.flatMap((run) => run.readings.map((r) => `${run.id}/${r.id}`)));
  const paths = new Set(site.paths.map((p) => p.id));
  for (const [i, dig] of site.digging.digs.entries()) {
    const here = ['digging', 'digs', i] as const;
    if (dig.is === 'pit') {
      const name = `${dig.at.run}/${dig.at.reading}`;
      if (!readings.has(name)) yield { code: 'unknown-reading', path: [...here, 'at'], name };
    } else {
      if (!paths.has(dig.path)) yield { code: 'unknown-path', path: [...here, 'path'], name: dig.path };
      if (dig.from >= dig.to) yield { code: 'dig-out-of-order', path: [...here, 'to'], name: dig.id };
    }
  }
}

/** Known lengths run between two points of their own pipe. */
function* danglingLengths(site: Site): Generator<IntegrityProblem> {
  for (const [i, path] of site.paths.entries()) {
    for (const [j, { from, to }] of (path.knownLengths ?? []).entries()) {
      const here = ['paths', i, 'knownLengths', j] as const;
      if (from === to) yield { code: 'length-to-itself', path: here, name: from };
      for (const [end, at] of [
        ['from', from],
        ['to', to],
      ] as const) {
        if (!path.vertices.some((v) => v.id === at)) {
          yield { code: 'unknown-point', path: [...here, end], name: refKey({ of: path.id, at }) };
        }
      }
    }
  }
}

function* stretchOrder(site: Site): Generator<IntegrityProblem> {
  for (const [i, path] of site.paths.entries()) {
    for (const [j, stretch] of path.stretches.entries()) {
      const before = path.stretches[j - 1];
      const wrong = before === undefined ? stretch.from !== 0 : stretch.from <= before.from;
      if (wrong) {
        yield {
          code: 'stretches-out-of-order',
          path: ['paths', i, 'stretches', j, 'from'],
          name: String(stretch.from),
        };
      }
    }
  }
}

/** Points that are measured from one another in a ring. Reported once for each point from which the ring is found. */
function* circularSpots(site: Site): Generator<IntegrityProblem> {
  const needs = new Map<string, readonly string[]>();
  const where = new Map<string, readonly (string | number)[]>();
  const lists = [
    ...site.features.map((owner, i) => ({ owner, path: ['features', i] as const })),
    ...site.paths.map((owner, i) => ({ owner, path: ['paths', i] as const })),
  ];
  for (const { owner, path } of lists) {
    for (const [j, v] of owner.vertices.entries()) {
      const key = refKey({ of: owner.id, at: v.id });
      needs.set(key, neededPoints(owner, j));
      where.set(key, [...path, 'vertices', j, 'spot']);
    }
  }
  for (const key of dependencyOrder(needs).circular) {
    yield { code: 'depends-on-itself', path: where.get(key) ?? [], name: key };
  }
}

function* circularJoins(site: Site): Generator<IntegrityProblem> {
  const paths = new Set(site.paths.map((p) => p.id));
  const joins = new Map<string, readonly string[]>();
  for (const path of site.paths) {
    const last = path.vertices.at(-1)?.spot;
    joins.set(path.id, last?.by === 'at' && paths.has(last.point.of) ? [last.point.of] : []);
  }
  for (const key of dependencyOrder(joins).circular) {
    yield {
      code: 'joins-itself',
      path: ['paths', site.paths.findIndex((p) => p.id === key), 'vertices'],
      name: key,
    };
  }
}
