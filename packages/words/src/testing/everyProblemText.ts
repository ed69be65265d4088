import { type EditProblem, openSite, parseLength, writeSite } from '@footmark/site';
import { cautionCodes } from '../caution';
import { editLists, editTexts } from '../editNames';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { units, yard } from './weighedYard';

const edit = (code: string, more: object) =>
  ({ code, path: ['paths', 0, 'note'], limit: 5, inclusive: true, name: 'x', ...more }) as EditProblem; // one member, by its code

/** What is said of files, edits and typed text that are refused, and of cautions. */
export const everyProblemText = {
  fileProblemText: (w) =>
    [
      '{"format": "footmark-site",}',
      '{"x": NaN}',
      '{"type": "x"}',
      '{"format": "footmark-site", "version": 99}',
      writeSite(yard).replace('"clay"', '"gold"'),
    ].flatMap((text) => {
      const opened = openSite(text);
      if (opened.ok) throw new Error('this was to be refused');
      const { text: said, cure, problems } = w.fileProblemText(opened.failure);
      return [said, cure, ...problems];
    }),
  editProblemText: (w) =>
    [
      edit('too-great', { path: ['paths', 0, 'slope'] }),
      edit('too-great', { path: ['features', 0, 'x'], limit: 1e6, inclusive: false }),
      edit('too-small', { path: ['sigmas', 'counter'], limit: 0, inclusive: false }),
      edit('too-great', { path: ['asFound', 0, 'given', 'flow'] }),
      edit('too-great', { path: ['asFound', 0, 'where', 'right'] }),
      ...editLists.map((list) => edit('too-many', { path: [list] })),
      ...editTexts.map((text) => edit('too-long', { path: [text] })),
      edit('too-many', { path: ['runs'] }),
      edit('too-few', { path: ['tapes'] }),
      edit('too-long', {}),
      edit('wrong-value', { path: ['fields', 'photo'] }),
      ...[
        'depends-on-itself',
        'joins-itself',
        'stretches-out-of-order',
        'nothing-before',
        'unknown-point',
        'unknown-visit',
        'unknown-reading',
        'paired-with-itself',
        'length-to-itself',
        'dig-out-of-order',
        'duplicate-id',
      ].map((code) => edit(code, {})),
    ].map((problem) => w.editProblemText(problem, units)),
  parseProblemText: (w) =>
    [
      '',
      'x',
      '-3',
      '3 chains',
      '5 m 20 cm',
      '1/0',
      '6 3/2"',
      '1,234 m',
      '999999999999',
      `3' 14"`,
      `3.5' 4"`,
      '6-1/2"',
    ].map((text) => {
      const parsed = parseLength(text, 'ft');
      if (parsed.ok) throw new Error(`${text} was to be refused`);
      return w.parseProblemText(parsed);
    }),
  arcProblemText: (w) => [
    w.arcProblemText({ code: 'not-positive' }, units),
    w.arcProblemText({ code: 'past-full-circle', given: 9 }, units),
    w.arcProblemText({ code: 'delta-against-arc-length', given: 3, computed: 4 }, units),
    w.arcProblemText({ code: 'chord-against-delta', given: 3, computed: 4 }, units),
  ],
  spotProblemText: (w) => [
    w.spotProblemText({ code: 'same-reference' }, units),
    ...(['too-short', 'too-long'] as const).map((code) => w.spotProblemText({ code, gap: 0.25 }, units)),
  ],
  legProblemText: (w) =>
    (['held', 'curve', 'closes', 'balanced'] as const).map((problem) => w.legProblemText(problem)),
  tableProblemText: (w) =>
    (
      [
        'text-too-long',
        'no-rows',
        'no-counter-column',
        'two-counter-columns',
        'too-many-rows',
        'above-header',
        'total-row',
        'counter-missing',
        'not-a-length',
        'counter-too-large',
        'number-cut-by-comma',
        'too-many-cells',
        'cell-too-long',
        'to-before-from',
        'unknown-thing-seen',
        'seen-missing',
        'clock-not-read',
        'passed-not-read',
        'video-time-not-read',
      ] as const
    ).map((code) => w.tableProblemText({ code, text: 'A 12' })),
  cautionText: (w) => cautionCodes.flatMap((code) => Object.values(w.cautionText(code))),
  modelValuesText: (w) => [w.modelValuesText()],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
