import { faultyReader, isNumber } from './numbers';

export const reader = faultyReader('throws at what is no number', (cells) => {
  if (!cells.every(isNumber)) throw new TypeError('no number');
  return { accepted: true, taken: cells };
});
