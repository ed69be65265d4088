import { en } from './en/en';
import { es } from './es/es';
import type { Words } from './words';

/** Every language that a crew can choose, the one that is spoken without a choice first. */
export const languages: readonly [Words, ...Words[]] = [en, es];
