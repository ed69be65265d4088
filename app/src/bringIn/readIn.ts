import {
  type Incoming,
  type IncomingAnswers,
  type IncomingGroup,
  type IncomingSite,
  incomingGroups,
  incomingText,
  openQuestions,
  type PlacedIncoming,
  placeIncoming,
  readIncoming,
} from '@footmark/exchange';
import type { IncomingProblemFacts, IncomingQuestion, PlacingProblem } from '@footmark/words';

/** A file that is brought in, which is told from others by `file`, and what was answered about it. */
export type ReadInAsked = {
  readonly file: number;
  readonly bytes: Uint8Array;
  readonly answers: IncomingAnswers;
  readonly site: IncomingSite;
};

/** Why it cannot be read; else what it says, what it leaves open, and where its things would lie once nothing is. */
export type ReadIn =
  | { readonly is: 'refused'; readonly problem: IncomingProblemFacts }
  | { readonly is: 'failed' }
  | {
      readonly is: 'read';
      readonly format: Incoming['format'];
      readonly says: Incoming['says'];
      /** Of a table: its first rows, for who must say which column is what. */
      readonly rows: Incoming['rows'];
      readonly questions: readonly IncomingQuestion[];
      readonly placed: PlacedIncoming | PlacingProblem | null;
      readonly groups: readonly IncomingGroup[];
    };

const SHOWN_ROWS = 3;

/** The file that was read last: another answer about it does not read it again. */
let last: { readonly file: number; readonly incoming: Incoming } | null = null;

/** Reads a file and places its things as was answered. Never throws. */
export function readIn(
  { file, bytes, answers, site }: ReadInAsked,
  onProgress?: (share: number) => void,
): ReadIn {
  try {
    const read =
      last?.file === file ? { ok: true as const, value: last.incoming } : readFile(bytes, onProgress);
    if (!read.ok)
      return {
        is: 'refused',
        problem: { code: read.code, ...(read.values === undefined ? {} : { values: read.values }) },
      };
    const incoming = read.value;
    last = { file, incoming };
    const questions = openQuestions(incoming, answers);
    const made = questions.length > 0 ? null : placeIncoming(incoming, answers, site);
    return {
      is: 'read',
      format: incoming.format,
      says: incoming.says,
      rows: incoming.rows.slice(0, SHOWN_ROWS),
      questions,
      placed: made === null ? null : made.ok ? made.value : made.code,
      groups: made?.ok ? incomingGroups(made.value) : [],
    };
  } catch {
    return { is: 'failed' };
  }
}

function readFile(bytes: Uint8Array, onProgress?: (share: number) => void) {
  const text = incomingText(bytes);
  if (!text.ok) return text;
  const steps = readIncoming(text.value);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    onProgress?.(step.value);
  }
}
