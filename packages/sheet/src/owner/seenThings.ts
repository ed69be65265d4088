import { type Mark, observationKinds, type SeverityWord, type Site } from '@footmark/site';

/** Something wrong with the pipe, by all the marks that it was seen at; the first tells where it is. */
export type SeenThing = Readonly<{ marks: readonly [Mark, ...Mark[]]; severity: SeverityWord | null }>;

const RANK: Readonly<Record<SeverityWord, number>> = { severe: 0, moderate: 1, slight: 2 };
const NOT_SAID = 3;

/** What is wrong with the pipe, the worst first; what two runs saw of one thing is one thing. Landmarks are left out. */
export function seenThings({ pairs }: Site, marks: readonly Mark[]): readonly SeenThing[] {
  const defects = marks.filter((m) => observationKinds[m.reading.seen].group === 'defect');
  const firstOf = new Map<string, string>(defects.map((m) => [m.reading.id, m.reading.id]));
  for (const { a, b } of pairs) {
    const [one, other] = [firstOf.get(a.reading), firstOf.get(b.reading)];
    if (one === undefined || other === undefined) continue;
    for (const [id, first] of firstOf) if (first === other) firstOf.set(id, one);
  }
  const groups = new Map<string, [Mark, ...Mark[]]>();
  for (const mark of defects) {
    const key = firstOf.get(mark.reading.id) ?? mark.reading.id;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [mark]);
    else group.push(mark);
  }
  return [...groups.values()]
    .map((group): SeenThing => ({ marks: group, severity: worstOf(group) }))
    .sort((a, b) => rank(a.severity) - rank(b.severity));
}

function worstOf(marks: readonly Mark[]): SeverityWord | null {
  const said = marks.flatMap((m) => m.reading.severity ?? []);
  return said.toSorted((a, b) => RANK[a] - RANK[b])[0] ?? null;
}

function rank(severity: SeverityWord | null): number {
  return severity === null ? NOT_SAID : RANK[severity];
}
