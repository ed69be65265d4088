import type { SayLess } from '../sayLess';
import { giveOrTakeTextIn, sureTextIn } from '../sureText';

export const lessThan: SayLess = (amount) => `menos de ${amount}`;

/** How unsure or how far off something is, alone and beside the number that it is about. */
export const sureText = sureTextIn(lessThan);
export const giveOrTakeText = giveOrTakeTextIn(lessThan);
