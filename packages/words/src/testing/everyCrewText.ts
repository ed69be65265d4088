import type { Danger } from '@footmark/dig';
import { type AnswerFailure, type FoundReport, foundStates } from '@footmark/site';
import { type CrewWords, crewLabels } from '../crewWords';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { need } from './need';
import { mark, ties, units, yard } from './weighedYard';

const danger: Danger = {
  is: 'service',
  feature: 'f5',
  distance: 0.3,
  at: { x: 0, y: 0 },
  byHand: true,
  depth: 0.6,
};

const found: FoundReport = {
  id: 'found',
  about: { is: 'place' },
  state: 'found',
  by: '',
  at: '2026-05-20T12:00:00Z',
  where: { by: 'paint', along: -0.3, right: 0.15 },
  depth: { to: 'top', depth: 1.5 },
  seen: 'roots',
  material: 'clay',
  note: '',
  photos: [],
};

const failures: readonly AnswerFailure[] = [
  { code: 'not-an-answer' },
  { code: 'too-large', characters: 6e6, most: 5e6 },
  { code: 'same-id', id: 'f1' },
  { code: 'not-json', position: 3, near: '{' },
  { code: 'newer-version', version: 9, known: 1 },
  { code: 'invalid', problems: [{ code: 'missing', path: ['found', 0, 'at'], detail: '' }], more: 0 },
  { code: 'invalid', problems: [{ code: 'missing', path: ['found', 0, 'at'], detail: '' }], more: 2 },
];

type CrewSays = (crew: CrewWords) => readonly string[];

/** What the crew view says; a function without a sample does not compile. */
const everyCrewWord: { readonly [Name in Exclude<keyof CrewWords, 'languageName'>]: CrewSays } = {
  label: (c) => crewLabels.map((label) => c.label(label)),
  stateName: (c) => foundStates.map((state) => c.stateName(state)),
  placeText: (c) => [c.placeText(2, 7)],
  tapeFromText: (c) => ties.pair.map((tie) => c.tapeFromText(tie.from, yard)),
  depthText: (c) => [
    c.depthText(null, units),
    c.depthText({ depth: 1.2, sigma: 0.1 }, units),
    c.depthText({ depth: -0.2, sigma: 0.1 }, units),
  ],
  holeText: (c) => [c.holeText(null, units), c.holeText({ length: 0.7, width: 1.1 }, units)],
  paintText: (c) => [c.paintText(1.2, 1, units)],
  dangerText: (c) =>
    [
      danger,
      { ...danger, distance: -0.1, byHand: false },
      { ...danger, depth: null },
      { ...danger, is: 'roots' as const, feature: 'f2', distance: -1 },
      { ...danger, is: 'roots' as const, feature: 'f2' },
      { ...danger, is: 'footing' as const, feature: 'f1', distance: -0.1 },
      { ...danger, is: 'footing' as const, feature: 'f3', depth: null },
    ].map((each) => c.dangerText(each, yard)),
  alongText: (c) => [-1, 0, 1].map((metres) => c.alongText(metres, units)),
  acrossText: (c) => [-1, 0, 1].map((metres) => c.acrossText(metres, units)),
  wayText: (c) => (['downstream', 'upstream', 'right', 'left'] as const).map((way) => c.wayText(way)),
  foundText: (c) =>
    [
      found,
      { ...found, depth: { to: 'invert' as const, depth: 1.5 }, where: { by: 'tapes' as const, ...tapes } },
      { ...found, state: 'not-found' as const, where: { by: 'paint' as const, along: 0, right: 0 } },
    ].map((each) => c.foundText(each, yard)),
  whereAmIText: (c) => [c.whereAmIText({ distance: 12, azimuth: 4, accuracy: 5 }, mark.label, units)],
  positionProblemText: (c) =>
    (['none', 'refused', 'unavailable', 'too-slow'] as const).map((why) => c.positionProblemText(why)),
  cameText: (c) => [c.cameText({ marks: 1, things: 1 }), c.cameText({ marks: 8, things: 24 })],
  codeText: (c) => [c.codeText(2, 5)],
  answerText: (c) => [
    c.answerText({ done: 1, found: 1, photos: 1 }),
    c.answerText({ done: 3, found: 0, photos: 2 }),
  ],
  answerProblemText: (c) =>
    failures.flatMap((failure) => {
      const { text, cure, problems } = c.answerProblemText(failure);
      return [text, cure, ...problems];
    }),
};

const tapes = {
  tapes: ties.pair.map(({ from, distance }) => ({ from: need(from).ref, distance })),
  side: ties.side,
};

export const everyCrewText = {
  crew: (w) => [w.crew.languageName, ...Object.values(everyCrewWord).flatMap((says) => says(w.crew))],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
