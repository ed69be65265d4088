import type { Danger } from '@footmark/dig';
import type {
  AnswerFailure,
  FoundReport,
  FoundState,
  ReferencePoint,
  SearchZone,
  Site,
  Units,
} from '@footmark/site';
import type { SaidOfFile } from './said';

/** What stands on buttons, fields and headings of the crew view, by what it is for. */
export const crewLabels = [
  'crew-view',
  'all-sites',
  'language',
  'colours',
  'mark-before',
  'next-mark',
  'this-mark',
  'whole-yard',
  'closer',
  'further',
  'nothing-to-do',
  'first-tape',
  'second-tape',
  'to-check',
  'no-tapes',
  'depth',
  'hole',
  'hole-sides',
  'do-not-hit',
  'nothing-known',
  'before-you-dig',
  'cautions-in-short',
  'done-here',
  'we-found',
  'change-found',
  'something-else',
  'where',
  'from-paint',
  'by-tapes',
  'at-paint',
  'tapes-do-not-meet',
  'along',
  'across',
  'depth-found',
  'to-top',
  'to-invert',
  'what-it-was',
  'not-said',
  'material',
  'diameter',
  'more',
  'less',
  'note',
  'your-name',
  'photos',
  'take-photo',
  'reading-photo',
  'no-room',
  'remove-photo',
  'remove-record',
  'done',
  'send-back',
  'send-file',
  'send-hint',
  'nothing-to-send',
  'send-link',
  'copy-link',
  'copied',
  'show-code',
  'next-code',
  'code-before',
  'hold-code',
  'photos-stay',
  'plan-came',
  'show-marks',
  'open-to-work',
  'other-here',
  'take-new',
  'keep-old',
  'scan-next',
  'answer-came',
  'no-such-site',
  'see-answer',
  'where-am-i',
  'looking-for-position',
  'north',
  'north-assumed',
  'saved',
  'saving',
  'not-saved',
  'try-again',
  'site-missing',
  'storage-silent',
  'other-state',
  'open-elsewhere',
  'go-on-here',
] as const;
export type CrewLabel = (typeof crewLabels)[number];

/** Why a device tells no position. */
export type PositionProblem = 'none' | 'refused' | 'unavailable' | 'too-slow';

/** What the crew view says, in one language. Numbers and units stay as the site has them. */
export type CrewWords = {
  /** What the language calls itself, on the switch. */
  readonly languageName: string;
  label(label: CrewLabel): string;
  stateName(state: FoundState): string;
  /** Which of how many marks is shown. */
  placeText(index: number, count: number): string;
  /** From which point a tape is pulled. */
  tapeFromText(reference: ReferencePoint, site: Site): string;
  /** How deep (m) the invert is, with its standard deviation; null: nobody knows. */
  depthText(depth: { readonly depth: number; readonly sigma: number } | null, units: Units): string;
  holeText(hole: SearchZone['hole'] | null, units: Units): string;
  /** Where paint stands for a mark that cannot be painted: how far (m) and to which true azimuth (rad) from the mark. */
  paintText(distance: number, azimuth: number, units: Units): string;
  /** What a hole may hit, how near it is and what to do. */
  dangerText(danger: Danger, site: Site): string;
  /** An offset (m) along the pipe, with the flow positive, and one to the right of it; `brief` without its length. */
  alongText(metres: number, units: Units): string;
  acrossText(metres: number, units: Units): string;
  /** Which way a stepper goes. */
  wayText(way: 'downstream' | 'upstream' | 'right' | 'left'): string;
  /** What was found, in a line: where, how deep, what. */
  foundText(found: FoundReport, site: Site): string;
  /** How far (m) and to which true azimuth (rad) the paint is from the device, which is sure to `accuracy` (m). */
  whereAmIText(
    to: { readonly distance: number; readonly azimuth: number; readonly accuracy: number },
    label: string,
    units: Units,
  ): string;
  positionProblemText(why: PositionProblem): string;
  /** What a plan that came holds. */
  cameText(counts: { readonly marks: number; readonly things: number }): string;
  /** Which of how many QR codes it is. */
  codeText(index: number, count: number): string;
  /** How much an answer holds. */
  answerText(counts: { readonly done: number; readonly found: number; readonly photos: number }): string;
  /** Why a file is not an answer that can be read. */
  answerProblemText(failure: AnswerFailure): SaidOfFile;
};
