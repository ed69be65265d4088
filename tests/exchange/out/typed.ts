import type { Site } from '@footmark/site';

/** Names that other programs could run, show as a page, or read in another direction. */
const WICKED = [
  '=HYPERLINK("http://example.test";"press")',
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  'invoice\u202egpj.exe',
  '\u2066left\u2069 right',
  ']]> & "quotes" \'too\'',
  '@SUM(A1)',
  '%%u\\U+0041 %%d',
  'raíces 根 🌳',
  'nul\u0000 bell\u0007',
] as const;

/** Gives a site's things wicked names, and its readings wicked notes. */
export function nameWickedly(site: Site): void {
  const name = (i: number) => WICKED[i % WICKED.length] ?? '';
  site.name = name(1);
  for (const [i, feature] of site.features.entries()) feature.name = `${name(i)} ${i}`;
  for (const [i, path] of site.paths.entries()) path.name = name(i);
  for (const run of site.runs) for (const [i, reading] of run.readings.entries()) reading.note = name(i);
}

/** What no name in any file of ours has: brackets, a formula's beginning, controls of direction (UAX 9). */
const WRONG = /[\u202a-\u202e\u2066-\u2069<>]|^[=+\-@]/;

/** Neither those nor a control character. */
export function isHarmless(text: string): boolean {
  return !WRONG.test(text) && [...text].every((c) => c >= ' ');
}
