import { z } from 'zod';
import { foundAbout, foundReport, foundStates } from './asFound';
import { fileProblems, MOST_LISTED, notJson, type OpenFailure } from './openSite';
import { id, line } from './scalars';

/** Version of the answer that this program writes. Every change of shape raises it by one. */
export const ANSWER_VERSION = 1;

/** The word that tells an answer from any other JSON. */
export const ANSWER_FORMAT = 'footmark-answer';

/** A crew writes a few lines for each mark: a longer text is something else. */
export const MOST_ANSWER_CHARACTERS = 5_000_000;

/** That a crew came so far with something, and when. */
export const tick = z.strictObject({
  about: foundAbout,
  state: z.enum(foundStates),
  at: z.iso.datetime({ offset: true }),
});
export type Tick = z.infer<typeof tick>;

/**
 * What a crew sends back: of which site, made from which state of it (the version of its file, and the first 64 bits of the SHA-256 of
 * its text), by whom, in which language, what was done, and what was found. Photos are named; they travel beside it.
 */
export const answer = z.strictObject({
  format: z.literal(ANSWER_FORMAT),
  version: z.literal(ANSWER_VERSION),
  id,
  site: id,
  madeFrom: z.strictObject({
    version: z.number().int().min(1),
    hash: z.string().regex(/^[0-9a-f]{16}$/),
  }),
  by: line,
  /** BCP 47 tag. */
  language: z
    .string()
    .max(35)
    .regex(/^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/),
  sentAt: z.iso.datetime({ offset: true }),
  ticks: z.array(tick).max(5000),
  found: z.array(foundReport).max(2000),
});
export type Answer = z.infer<typeof answer>;

/** Why something is not an answer that can be read. */
export type AnswerFailure =
  | Exclude<OpenFailure, { code: 'not-a-site' }>
  | { readonly code: 'not-an-answer' }
  | { readonly code: 'same-id'; readonly id: string };

export type OpenedAnswer =
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly failure: AnswerFailure };

/** Reads an answer's file: its size, JSON, then as `openAnswer`. */
export function readAnswer(text: string): OpenedAnswer {
  if (text.length > MOST_ANSWER_CHARACTERS) {
    return refuse({ code: 'too-large', characters: text.length, most: MOST_ANSWER_CHARACTERS });
  }
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    return refuse(notJson(text, error));
  }
  return openAnswer(raw);
}

/** Checks a value that is said to be an answer: format, version, shape, and that each record has an id of its own. */
export function openAnswer(value: unknown): OpenedAnswer {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== ANSWER_FORMAT) {
    return refuse({ code: 'not-an-answer' });
  }
  const version = 'version' in value ? value.version : undefined;
  if (typeof version === 'number' && Number.isInteger(version) && version > ANSWER_VERSION) {
    return refuse({ code: 'newer-version', version, known: ANSWER_VERSION });
  }
  const parsed = answer.safeParse(value, { reportInput: true });
  if (!parsed.success) {
    const problems = parsed.error.issues.flatMap(fileProblems);
    return refuse({
      code: 'invalid',
      problems: problems.slice(0, MOST_LISTED),
      more: Math.max(0, problems.length - MOST_LISTED),
    });
  }
  const seen = new Set<string>();
  for (const { id: own } of parsed.data.found) {
    if (seen.has(own)) return refuse({ code: 'same-id', id: own });
    seen.add(own);
  }
  return { ok: true, answer: parsed.data };
}

/** The text of an answer's file. */
export function writeAnswer(of: Answer): string {
  return `${JSON.stringify(of, null, 2)}\n`;
}

function refuse(failure: AnswerFailure): OpenedAnswer {
  return { ok: false, failure };
}
