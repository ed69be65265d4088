import { answerShape1 } from './answerShape1';

/** By version the shape that links of answers are coded by. */
export const answerShapes: Readonly<Record<number, string>> = { 1: answerShape1 };
