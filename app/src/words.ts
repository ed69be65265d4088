import { en, type Words } from '@footmark/words';

/** The language that the app speaks. */
export const words: Words = en;
