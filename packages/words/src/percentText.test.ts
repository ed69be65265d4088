import { expect, it } from 'vitest';
import { percentText } from './percentText';

it.each([
  [0, '0 %'],
  [0.0123, '1.2 %'],
  [0.5, '50 %'],
  [12.34, '1,200 %'],
  [0.0000034, '0.00034 %'],
])('a share of %d is %s', (share, text) => {
  expect(percentText(share)).toBe(text);
});
