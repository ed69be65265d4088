import { expect, it } from 'vitest';
import { noFitText } from './noFitText';

it.each([
  ['weighed again after a failure', true, true, /^Weighing/],
  ['weighed for the first time', true, false, /^Weighing/],
  ['failed', false, true, /could not be weighed/],
  ['without a run', false, false, /nothing to weigh/],
])('%s', (_, busy, failed, said) => {
  expect(noFitText({ busy, failed })).toMatch(said);
});
