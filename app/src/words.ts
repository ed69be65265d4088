import { en, type Words } from '@footmark/words';

/** The language that the app speaks: English, and in the crew view the one that the crew has chosen. */
export let words: Words = en;

/** Speaks another language from the next render on. */
export function speak(language: Words): void {
  words = language;
}
