import { settings } from '@footmark/site';
import type { Words } from '../words';
import { digFindingSample } from './digFindingSamples';
import type { SaidBy } from './everyName';
import { findingSample } from './findingSamples';
import { clearance } from './sampleWay';
import { dug, units, yard } from './weighedYard';

/** What is said of digs, land and clearances in the sample yard. */
export const everyDigText = {
  findingText: (w) => Object.values(w.findingText(findingSample('weak-cut'), yard)),
  digFindingText: (w) =>
    [undefined, { kind: 'dig', id: 'd1' } as const, { kind: 'feature', id: 'f2' } as const].flatMap((here) =>
      Object.values(w.digFindingText(digFindingSample('dig-in-root-zone'), dug, here)),
    ),
  digFindingTitle: (w) => [
    w.digFindingTitle(digFindingSample('dig-in-root-zone'), dug, { kind: 'feature', id: 'f2' }),
  ],
  digFindingSubject: (w) => [w.digFindingSubject(digFindingSample('dig-in-root-zone'), dug)],
  treeTakenText: (w) => [
    w.treeTakenText([
      { fact: 'tolerance', as: 'poor' },
      { fact: 'base-diameter', as: 'trunk-diameter' },
    ]),
  ],
  boreText: (w) => [
    w.boreText({ asked: 1.4, row: 'boreDepth', cover: 1.5, enough: true }, units),
    w.boreText({ asked: 1.4, row: 'boreDepth', cover: 1.1, enough: false }, units),
    w.boreText({ asked: 1.4, row: 'boreDepth', cover: null, enough: null }, units),
  ],
  oneCallText: (w) =>
    (['missing', 'not-called', 'waiting', 'valid', 'expired'] as const).flatMap((is) =>
      [{ ticket: '1' }, { ticket: '1', validFrom: '2026-05-04', validUntil: '2026-05-18' }].map((ticket) =>
        w.oneCallText({ is, days: null, datesClash: false }, ticket),
      ),
    ),
  landText: (w) => [
    w.landText([], units),
    w.landText(
      (['shared', 'public', 'neighbour', 'outside', 'unknown'] as const).map((whose, i) => ({
        path: 'p1',
        whose,
        from: 0,
        to: 9 - i,
        features: [],
      })),
      units,
    ),
  ],
  landName: (w) => [w.landName('f3', yard)],
  whoseAtText: (w) =>
    (['shared', 'public', 'neighbour', 'outside'] as const).map((whose) =>
      w.whoseAtText({ whose, features: ['f3'] }, 'full', yard),
    ),
  landCrossingText: (w) => [
    w.landCrossingText(
      {
        path: 'p1',
        station: 3,
        at: { x: 0, y: 0 },
        feature: 'f3',
        kind: 'street',
        from: 'private',
        to: 'public',
      },
      yard,
    ),
  ],
  ruleChangeText: (w) => [
    w.ruleChangeText(
      { rule: 'waterService', value: 2, who: 'R. Alder', why: 'x' },
      settings.misclosure,
      units,
    ),
  ],
  obstacleText: (w) => [
    ...(['meets', 'misses', 'by-depth', 'serves', 'crosses'] as const).map((verdict) =>
      w.obstacleText({ ...clearance, verdict }, yard),
    ),
    w.obstacleText(
      { ...clearance, kind: 'tree', required: null, rule: null, verdict: null, distance: -0.2 },
      yard,
    ),
  ],
  dimensionText: (w) => [
    w.dimensionText(clearance, { kind: 'path', id: 'p2' }, 'full', yard),
    w.dimensionText({ ...clearance, distance: -0.2 }, { kind: 'dig', id: 'd2' }, 'full', dug),
  ],
  areaText: (w) => [w.areaText(0.01, units)],
  volumeText: (w) => [w.volumeText(6, units)],
  velocityText: (w) => [w.velocityText(0.8, units)],
  dischargeText: (w) => [w.dischargeText(0.01, units)],
  dropText: (w) => [w.dropText(-0.5, units)],
  belowGroundText: (w) => [w.belowGroundText(-0.5, units)],
  shareText: (w) => [w.shareText(0.001)],
  acrossText: (w) => [w.acrossText(1.5)],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
