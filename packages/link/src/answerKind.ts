import { ANSWER_VERSION, answerSchema } from '@footmark/site';
import { answerShapes } from './frozen/answerShapes';
import type { LinkKind } from './linkKind';

/** What a crew sends back, in a link. Its photos travel beside it. */
export const answerKind: LinkKind = {
  number: 2,
  version: ANSWER_VERSION,
  schema: answerSchema,
  shapes: answerShapes,
};
