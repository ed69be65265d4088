import { standardBends, type VisitThing } from '@footmark/site';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { need } from './need';
import { dug, mark, profile, ties, units, yard } from './weighedYard';

const bend = { turn: Math.PI / 4, known: null, fitting: need(standardBends[0]), radius: 0.2, tangent: 0.1 };
const [own] = [
  {
    ref: { of: 'f1', at: 'b' },
    key: 'f1/b',
    at: { x: 0, y: 0 },
    measured: true,
    corner: 'B',
    faceRadius: 0.2,
  },
];
/** Names of things and what stands on the plan, said of the sample yard. */
export const everySiteText = {
  visitName: (w) =>
    [
      { id: 'v', date: '2025-03-09', note: '' },
      { id: 'v', note: '' },
    ].map((v) => w.visitName({ ...v, purpose: 'first-look' })),
  comparedText: (w) =>
    (['gone', 'appeared', 'stillThere', 'notLookedAtAgain', 'firstLookedAt'] as const).flatMap((fate) =>
      Object.values(w.comparedText(fate)),
    ),
  faredText: (w) => {
    const thing = (severity?: string) => ({ marks: [{ reading: { severity } }] }) as unknown as VisitThing; // all that is told of it
    return [
      [thing('slight'), thing('severe')],
      [thing('slight'), thing('slight')],
      [thing(), thing()],
      [thing(), thing('slight')],
    ].map(([before, after]) =>
      w.faredText({ before: need(before), after: need(after), moved: 0.05, sigma: 0.1 }, units),
    );
  },
  stoppedText: (w) => [
    w.stoppedText({ is: 'stopped', run: 'r1', ended: 'could-not-pass', last: mark }, yard),
    w.stoppedText({ is: 'stopped', run: 'r1', ended: null, last: mark }, yard),
    w.stoppedText({ is: 'began', run: 'r1' }, yard),
  ],
  clockText: (w) =>
    ([{ from: 6 }, { from: 4, to: 8 }, { from: 11, to: 1 }, { from: 1, to: 1 }] as const).map((clock) =>
      w.clockText(clock),
    ),
  dateText: (w) => [w.dateText('2025-03-09')],
  levelSourceName: (w) => [
    w.levelSourceName({ is: 'point', vertex: 'b', measured: 'invert' }, yard),
    w.levelSourceName({ is: 'feature', feature: 'f3', field: 'invert' }, yard),
    w.levelSourceName({ is: 'locate', feature: 'l1' }, yard),
    w.levelSourceName({ is: 'join', path: 'p2' }, yard),
  ],
  profileHeightsText: (w) =>
    (['levels', 'below-ground'] as const).map((heights) => w.profileHeightsText({ ...profile, heights })),
  sureText: (w) => [w.sureText(0.001, units)],
  giveOrTakeText: (w) => [w.giveOrTakeText(0.001, units)],
  targetName: (w) =>
    [
      { kind: 'site' },
      { kind: 'feature', id: 'f3' },
      { kind: 'feature', id: 'f1', vertex: 'b' },
      { kind: 'path', id: 'p2' },
      { kind: 'path', id: 'p1', vertex: 'b' },
      { kind: 'run', id: 'r1' },
      { kind: 'dig', id: 'd1' },
      { kind: 'dig', id: 'd2' },
      { kind: 'set-out', path: 'p1', number: 3 },
      { kind: 'reading', run: 'r1', id: 'q1' },
    ].map((target) => w.targetName(target as Parameters<Words['targetName']>[0], dug)), // each is one of them
  referenceName: (w) => [w.referenceName(need(own), yard)],
  clearanceName: (w) => [
    w.clearanceName(
      { feature: 'f3', kind: 'cleanout', distance: 1, at: { x: 0, y: 0 }, toCentre: true },
      yard,
    ),
  ],
  tieText: (w) => ties.pair.map((tie) => w.tieText(tie, yard)),
  locatedText: (w) => [w.locatedText('A7', null, units), w.locatedText('A7', 0.4, units)],
  digText: (w) => [w.digText({ length: 0.7, width: 1.1 }, units)],
  excavationText: (w) => [
    w.excavationText(
      {
        depth: { least: 1, most: 1.5, sigma: 0, from: 'pipe' },
        top: { width: 3, length: 9, outline: [], area: 0 },
      },
      'full',
      units,
    ),
    w.excavationText({ depth: null, top: null }, 'full', units),
  ],
  rootZoneText: (w) => [
    w.rootZoneText({ is: 'chosen', rule: 'six-diameters', radius: 2 }, units),
    w.rootZoneText({ is: 'stability', rule: 'as-4970', radius: 2 }, units),
  ],
  spoilText: (w) => [w.spoilText(6, units)],
  footingLineText: (w) => [w.footingLineText(1, 1.5, units), w.footingLineText(null, 1.5, units)],
  unseenText: (w) => [w.unseenText(3, units)],
  sideText: (w) => [w.sideText(ties, yard)],
  setOutName: (w) => [
    ...(['start', 'end', 'between'] as const).map((is) => w.setOutName({ is, bend: null })),
    w.setOutName({ is: 'bend', bend }),
    w.setOutName({ is: 'bend', bend: { ...bend, fitting: null, turn: -0.5 } }),
  ],
  setOutBendTexts: (w) => [
    ...w.setOutBendTexts(bend, units),
    ...w.setOutBendTexts({ ...bend, known: 0.3, fitting: null, tangent: 0 }, units),
  ],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
