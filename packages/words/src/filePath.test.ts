import { expect, it } from 'vitest';
import { filePathText } from './filePath';

it.each([
  [[], ''],
  [['features', 3, 'vertices', 0, 'spot'], 'features[3].vertices[0].spot'],
  [['runs', 0, 'a b'], 'runs[0]["a b"]'],
  [[2, 'x'], '[2].x'],
])('%j is %s', (path, text) => {
  expect(filePathText(path)).toBe(text);
});
