import { settings } from '@footmark/site';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { accuracy, bare, bareFit, derived, fit, found, mark, seen, yard } from './weighedYard';

const known = { mark: seen, point: { of: 'f3', at: 'a' }, at: { x: 0, y: 0 }, cable: 3, slack: 0.2 };
/** How marks came about and what the fit tells, said of the sample yard. */
export const everyFitText = {
  traceSteps: (w) =>
    [mark, seen, { ...seen, trace: { ...seen.trace, start: 3, ahead: 0.1, fitted: true } }].flatMap((m) =>
      w.traceSteps(m, yard, derived).flatMap(({ label, note }) => [label, note ?? null]),
    ),
  fitText: (w) =>
    [
      fit,
      { ...fit, status: 'undetermined' as const },
      { ...fit, status: 'not-converged' as const },
      { ...fit, blunders: [] },
    ]
      .flatMap((f) => Object.values(w.fitText(f, yard)))
      .concat(Object.values(w.fitText(bareFit, bare))),
  noFitText: (w) => [
    w.noFitText({ busy: true, failed: false }),
    w.noFitText({ busy: false, failed: true }),
    w.noFitText({ busy: false, failed: false }),
  ],
  oldFitText: (w) => [
    w.oldFitText({ busy: true, failed: false }),
    w.oldFitText({ busy: false, failed: true }),
    w.oldFitText({ busy: false, failed: false }),
  ],
  suggestedText: (w) => [w.suggestedText(1), w.suggestedText(3)],
  misfitText: (w) => Object.values(w.misfitText(fit) ?? {}),
  surpriseText: (w) => [w.surpriseText(1), w.surpriseText(2), w.surpriseText(12.3)],
  evidenceName: (w) => fit.observations.map((o) => w.evidenceName(o.tag, yard)),
  offText: (w) => fit.observations.map((o) => w.offText([o], yard)),
  blunderText: (w) =>
    fit.observations.flatMap(({ tag, name, observed }) =>
      [0.5, -0.5].map((blunder) => w.blunderText({ tag, name, observed, blunder, standardized: 4 }, yard)),
    ),
  pairProblemText: (w) =>
    (['itself', 'one-run', 'paired'] as const).map((problem) => w.pairProblemText(problem)),
  apartText: (w) => [w.apartText({ closure: 0.5, sigma: 0.1 }, yard)],
  explanationText: (w) => [
    ...(['zero', 'riser', 'scale'] as const).map((is) =>
      w.explanationText({ is, run: 'r1', wouldBe: 0.98, by: -0.02 }, yard),
    ),
    w.explanationText({ is: 'pipe', wouldBe: 28, by: 0.6 }, yard),
  ],
  accuracyText: (w) =>
    [accuracy, { ...accuracy, count: 1, independent: false }].flatMap((a) =>
      (['receiver', 'digging'] as const).flatMap((by) => Object.values(w.accuracyText(a, yard, by))),
    ),
  foundText: (w) => [
    w.foundText({ ...found, along: 0.5, across: -0.5, distance: 0.7, depth: 0.6 }, yard),
    w.foundText({ ...found, along: 0, across: 0, distance: 0 }, yard),
  ],
  reachTexts: (w) => [
    ...w.reachTexts(
      {
        knowns: [known],
        region: null,
        pipes: [{ from: known, to: known, reach: { halfWidth: 1.4 } as never }],
        contradiction: null,
      },
      yard,
    ), // all that is told of it
    ...w.reachTexts(
      {
        knowns: [known],
        region: null,
        pipes: [],
        contradiction: { knowns: [known, known], gap: 0.4 } as never,
      },
      yard,
    ), // all that is told of it
  ],
  windText: (w) => [0, 1, 2, 3, 4, 5, 6, 7].map((n) => w.windText((n * Math.PI) / 4)),
  basisText: (w) => [
    w.basisText(settings.misclosure),
    ...(['memory', 'computed', 'read'] as const).map((basis) =>
      w.basisText({ ...settings.misclosure, title: 'BS 5837', edition: '2012', clause: '4.6', basis }),
    ),
  ],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
