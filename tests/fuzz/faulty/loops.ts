import { faultyReader } from './numbers';

export const reader = faultyReader('looks for ever for what stands between two commas', (cells) => {
  const taken: string[] = [];
  for (let at = 0; taken.length < cells.length; ) {
    const cell = cells[at] ?? '';
    if (cell === '') continue; // and is not one further
    taken.push(cell);
    at += 1;
  }
  return { accepted: true, taken };
});
