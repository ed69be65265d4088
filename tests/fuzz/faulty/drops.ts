import { faultyReader, isNumber } from './numbers';

export const reader = faultyReader('takes half where one is no number', (cells) => {
  const sound = cells.every(isNumber);
  return { accepted: true, taken: sound ? cells : cells.slice(0, Math.ceil(cells.length / 2)) };
});
