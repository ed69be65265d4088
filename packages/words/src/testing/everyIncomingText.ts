import type { BundleFailure, BundleNote } from '../bundle';
import type {
  IncomingFinding,
  IncomingNote,
  IncomingProblemCode,
  IncomingProblemFacts,
  IncomingQuestion,
  PlacingProblem,
} from '../incoming';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { units } from './weighedYard';

const problems: { readonly [Code in IncomingProblemCode]: IncomingProblemFacts['values'] } = {
  'too-large': { characters: 31e6, most: 20e6 },
  'unknown-format': undefined,
  'not-json': undefined,
  'not-geojson': undefined,
  'not-xml': { line: 12 },
  'has-doctype': undefined,
  'not-kml': undefined,
  'not-dxf': { line: 1234 },
  'binary-dxf': undefined,
  'cut-short': undefined,
  'too-deep': { most: 16 },
  'too-many-things': { most: 50_000 },
  'too-many-points': { most: 500_000 },
  'nothing-in-it': undefined,
};

const notes: Readonly<Record<IncomingNote['code'], number>> = {
  'no-number': 1,
  'too-few-points': 2,
  'holes-left-out': 1,
  'kinds-left-out': 4,
  'texts-left-out': 1,
  'links-left-out': 1234,
  'paper-left-out': 1,
  'curves-as-chords': 1,
  'rows-left-out': 3,
};

const questions: Readonly<Record<IncomingQuestion, true>> = { coordinates: true, unit: true, order: true };

const placing: Readonly<Record<PlacingProblem, true>> = {
  'questions-open': true,
  'site-not-on-the-earth': true,
  'grid-not-read': true,
  'not-an-order': true,
};

const findings: {
  readonly [Code in IncomingFinding['code']]: readonly Omit<
    Extract<IncomingFinding, { code: Code }>,
    'severity'
  >[];
} = {
  'too-far': [{ code: 'too-far', metres: 11e6 }],
  'far-away': [{ code: 'far-away', metres: 900 }],
  'wrong-hemisphere': [{ code: 'wrong-hemisphere', metres: 8e6 }],
  'order-swapped': [
    { code: 'order-swapped', metres: null },
    { code: 'order-swapped', metres: 8e6 },
  ],
  'unit-suspected': [{ code: 'unit-suspected', metres: 3e6 }],
  'larger-than-a-yard': [{ code: 'larger-than-a-yard', metres: 52_000 }],
  'smaller-than-a-yard': [{ code: 'smaller-than-a-yard', metres: 0.02 }],
  'no-place': [{ code: 'no-place', count: 3 }],
  'too-many-for-a-site': [{ code: 'too-many-for-a-site', count: 7000, room: 1200 }],
  'too-many-corners': [{ code: 'too-many-corners', count: 2, most: 1000 }],
};

const failures: { readonly [Code in BundleFailure['code']]: Extract<BundleFailure, { code: Code }> } = {
  'bundle-too-large': { code: 'bundle-too-large', bytes: 800e6, most: 500e6 },
  'not-a-bundle': { code: 'not-a-bundle' },
  'bundle-damaged': { code: 'bundle-damaged' },
  'bundle-not-read': { code: 'bundle-not-read' },
  'bundle-too-many-files': { code: 'bundle-too-many-files', most: 2000 },
  'bundle-swells': { code: 'bundle-swells', most: 500e6 },
  'bundle-path-outside': { code: 'bundle-path-outside', name: '../1' },
  'bundle-name-twice': { code: 'bundle-name-twice', name: '1.png' },
  'bundle-without-site': { code: 'bundle-without-site' },
  'bundle-site': { code: 'bundle-site', failure: { code: 'not-a-site' } },
};

const bundleNotes: readonly BundleNote[] = [
  { code: 'unknown-files', names: ['1.txt'] },
  { code: 'not-pictures', names: ['1.png', '2.png', '3.png', '4.png', '5.png', '6.png', '7.png'] },
  { code: 'pictures-missing', count: 1 },
  { code: 'pictures-missing', count: 4 },
  { code: 'names-not-read' },
];

const keysOf = <Key extends string>(table: Readonly<Record<Key, unknown>>) => Object.keys(table) as Key[]; // of a const table

/** What is said of files and bundles that come in. */
export const everyIncomingText = {
  incomingProblemText: (w) =>
    keysOf(problems).flatMap((code) => {
      const values = problems[code];
      return Object.values(w.incomingProblemText(values === undefined ? { code } : { code, values }));
    }),
  incomingNoteText: (w) => keysOf(notes).map((code) => w.incomingNoteText({ code, count: notes[code] })),
  incomingQuestionText: (w) => keysOf(questions).map((question) => w.incomingQuestionText(question)),
  placingProblemText: (w) =>
    keysOf(placing).flatMap((problem) => Object.values(w.placingProblemText(problem))),
  incomingFindingText: (w) =>
    Object.values(findings).flatMap((samples) =>
      samples.flatMap((each) =>
        (['ft', 'm'] as const).flatMap(
          (length) =>
            Object.values(
              w.incomingFindingText({ severity: 'note', ...each } as IncomingFinding, { ...units, length }),
            ), // of the same code
        ),
      ),
    ),
  bundleProblemText: (w) =>
    Object.values<BundleFailure>(failures).flatMap((failure) => {
      const { text, cure, problems: places } = w.bundleProblemText(failure);
      return [text, cure, ...places];
    }),
  bundleNoteText: (w) => bundleNotes.map((note) => w.bundleNoteText(note)),
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
