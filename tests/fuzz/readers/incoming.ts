import { isDeepStrictEqual } from 'node:util';
import {
  finishSteps,
  type Incoming,
  type IncomingAnswers,
  incomingGroups,
  incomingLoose,
  incomingSite,
  incomingText,
  openQuestions,
  type PlacedIncoming,
  placeIncoming,
  readIncoming,
} from '@footmark/exchange';
import { derive, type FeatureKind, loadProjection, pasteThings, type Site, soundEdit } from '@footmark/site';
import { en, es } from '@footmark/words';
import { type FuzzReader, inWords, type Mutator } from '../reader';
import { yardOnTheEarth } from '../soundSites';
import { noNumberIn, type SiteBack, siteBack, siteWrong } from '../whole';

/** What was answered, and where that puts the things. */
type Placing = { readonly answers: IncomingAnswers; readonly is: PlacedIncoming };

/** A file that was read, where its things come to lie, and the site once they are in it; null where they cannot be taken. */
export type IncomingRead = {
  readonly accepted: boolean;
  readonly incoming: Incoming | null;
  readonly placed: readonly Placing[];
  readonly taken: readonly SiteBack[];
};

const REFUSED: IncomingRead = { accepted: false, incoming: null, placed: [], taken: [] };

const METRES = { name: 'm', metres: 1 } as const;
const KINDS = [
  { point: 'note', line: 'fence', area: 'patio' },
  { point: 'spot-level', line: 'fence', area: 'building' },
] as const satisfies readonly Readonly<Record<string, FeatureKind>>[];

/** So many things at most are put into a site to see whether it stays sound. */
const MOST_TAKEN = 400;

const yard: Site = yardOnTheEarth();
let there: ReturnType<typeof incomingSite> | null = null;

type Kind = {
  readonly name: string;
  readonly format: Incoming['format'];
  seeds(): readonly Uint8Array[];
  readonly mutators: readonly Mutator[];
  /** How many things there are in the text, left out or taken, by a count of its own; null where it cannot tell. */
  count(text: string, incoming: Incoming): number | null;
  /** Every number that may be a coordinate; null where they are computed. */
  numbers(text: string): ReadonlySet<number> | null;
};

/**
 * A reader of files from other programs, with what the program does next: place the things, and put them into a site. Partial: a coordinate that is
 * none or stands nowhere in the file; a thing that is neither taken nor counted among what is left out; a site that is not sound afterwards.
 */
export function incomingReader({
  name,
  format,
  seeds,
  mutators,
  count,
  numbers,
}: Kind): FuzzReader<IncomingRead> {
  return {
    name,
    seeds,
    mutators,
    ready: async () => {
      await loadProjection();
      there = incomingSite(derive(yard));
    },
    read(input) {
      const text = incomingText(input);
      const read = text.ok ? finishSteps(readIncoming(text.value)) : text;
      if (!read.ok) {
        for (const words of [en, es]) inWords(words.incomingProblemText(read));
        return REFUSED;
      }
      return placedAndTaken(read.value);
    },
    judge(input, { incoming, placed, taken }) {
      if (incoming === null) return 'accepted without anything';
      const text = incomingText(input);
      if (!text.ok) return 'accepted, and has no text';
      // a mutation can make a file of another format, which another reader's judge counts
      const own = incoming.format === format;
      return (
        thingsWrong(incoming, own ? numbers(text.value) : null) ??
        (own ? countWrong(incoming, count(text.value, incoming)) : null) ??
        placed
          .map((one) => placedWrong(one, incoming) ?? swapped(one, incoming))
          .find((wrong) => wrong !== null) ??
        taken.map(siteWrong).find((wrong) => wrong !== null) ??
        null
      );
    },
  };
}

function placedAndTaken(incoming: Incoming): IncomingRead {
  if (there === null) throw new Error('not ready');
  for (const question of openQuestions(incoming, {})) inWords(en.incomingQuestionText(question));
  const order = incoming.format === 'table' ? (incoming.says.order ?? 'PNEZD') : 'EN';
  const asked: readonly IncomingAnswers[] = [
    {},
    { coordinates: { is: 'site' }, unit: METRES, order },
    { order: 'NE' },
  ];
  const placed: Placing[] = [];
  const taken: SiteBack[] = [];
  for (const [i, answers] of asked.entries()) {
    const made = placeIncoming(incoming, answers, there);
    if (!made.ok) {
      inWords(en.placingProblemText(made.code));
      continue;
    }
    placed.push({ answers, is: made.value });
    for (const note of made.value.notes) for (const words of [en, es]) inWords(words.incomingNoteText(note));
    for (const finding of made.value.findings) inWords(en.incomingFindingText(finding, yard.units));
    if (!made.value.canBeTaken || made.value.things.length > MOST_TAKEN) continue;
    const shapes = KINDS[i % KINDS.length] ?? KINDS[0];
    const kinds = new Map(incomingGroups(made.value).map((g) => [g.key, shapes[g.shape]] as const));
    const loose = incomingLoose(made.value, { kinds, sigma: 0.02, levels: true }, yard.features.length);
    const ids = new Map(loose.things.features.map((f, n) => [f.id, `in-${n}`]));
    const edited = soundEdit(yard, pasteThings(yard, { things: loose.things, ids, by: { x: 0, y: 0 } }));
    if (edited.ok) taken.push(siteBack(edited.site));
    else for (const problem of edited.problems.slice(0, 3)) inWords(en.editProblemText(problem, yard.units));
  }
  return { accepted: true, incoming, placed, taken };
}

const FEWEST = { point: 1, line: 2, area: 3 } as const;

/** Controls and what turns the direction of text have no place in a name. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const NOT_IN_A_NAME = /[\u0000-\u001f\u007f\u202a-\u202e\u2066-\u2069]/;

function thingsWrong({ things, notes }: Incoming, numbers: ReadonlySet<number> | null): string | null {
  for (const { name, layer, shape, points } of things) {
    if (points.length < FEWEST[shape]) return `a ${shape} of ${points.length} points`;
    for (const text of [name, layer])
      if (text.length > 200 || NOT_IN_A_NAME.test(text)) return `a name ${JSON.stringify(text.slice(0, 80))}`;
    for (const p of points)
      for (const value of [p.first, p.second])
        if (numbers !== null && !numbers.has(value)) return `a coordinate ${value} that is not in the file`;
  }
  for (const { code, count } of notes)
    if (!Number.isSafeInteger(count) || count < 1) return `${code}: ${count}`;
  return noNumberIn(things);
}

/** Notes that are about things that were taken, or count their own. */
const NOT_LEFT_OUT: ReadonlySet<string> = new Set(['curves-as-chords']);

function countWrong({ format, things, rows, notes }: Incoming, expected: number | null): string | null {
  if (expected === null) return null;
  const left = notes.reduce((sum, { code, count }) => sum + (NOT_LEFT_OUT.has(code) ? 0 : count), 0);
  const taken = format === 'table' ? rows.length : things.length;
  if (taken + left === expected) return null;
  const told = notes.map(({ code, count }) => `${count} ${code}`).join(', ');
  return `${expected} in the file, ${taken} taken, left out: ${told || 'none'}`;
}

function placedWrong({ is: placed }: Placing, { format, rows, things }: Incoming): string | null {
  const { counts, findings, notes } = placed;
  const all = counts.point + counts.line + counts.area;
  const leftOut = notes.find((n) => n.code === 'rows-left-out')?.count ?? 0;
  const expected = format === 'table' ? rows.length - leftOut : things.length;
  if (all !== expected) return `${all} things counted of ${expected}`;
  const nowhere = findings.reduce((sum, f) => sum + (f.code === 'no-place' ? f.count : 0), 0);
  const wrong = findings.some((f) => f.severity === 'error');
  if (!wrong && placed.things.length + nowhere !== all) return `${placed.things.length} placed of ${all}`;
  return noNumberIn(placed.things) ?? noNumberIn(placed.extent ?? {}) ?? noNumberIn(findings);
}

/** Metres of the plan: things lie where the file says, easting first; those of a table where its columns of that letter say, row after row. */
function swapped({ answers, is }: Placing, { format, rows, things }: Incoming): string | null {
  if (answers.coordinates?.is !== 'site' || answers.unit !== METRES) return null;
  const order = answers.order ?? '';
  const given =
    format === 'table'
      ? rows.map((row) => [{ x: Number(row[order.indexOf('E')]), y: Number(row[order.indexOf('N')]) }])
      : things.map(({ points }) => points.map((p) => ({ x: p.first, y: p.second })));
  let next = 0;
  for (const { points } of is.things) {
    while (next < given.length && !isDeepStrictEqual(given[next], points)) next += 1;
    if (next === given.length) return `a thing at ${JSON.stringify(points[0])}, where the file has none`;
    next += 1;
  }
  return null;
}

/** All decimal numbers of a text. */
export function decimalsIn(text: string): ReadonlySet<number> {
  return new Set(
    [...text.matchAll(/[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?/g)].map(([found]) => Number(found)),
  );
}
