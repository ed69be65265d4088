import type { Answer } from '@footmark/site';
import { answerKind } from './answerKind';
import { type Encoded, encode } from './linkKind';

/** The bytes of a link to what a crew sends back, for `linkText` or QR symbols. */
export function answerBytes(answer: Answer): Encoded {
  return encode(answerKind, answer);
}
