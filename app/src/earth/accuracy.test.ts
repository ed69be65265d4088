import { expect, it } from 'vitest';
import { accuracyGrade } from './accuracy';

it('warns beyond 10 m and calls a fix of 60 m too poor for control', () => {
  expect([3, 10, 10.5, 30, 31, 60].map(accuracyGrade)).toEqual([
    'good',
    'good',
    'fair',
    'fair',
    'poor',
    'poor',
  ]);
});
