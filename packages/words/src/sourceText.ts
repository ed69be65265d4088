import type { SettingRow } from '@footmark/site';

/** Title, edition and clause of what a value of a table is known from, as such sources are cited. */
export function sourceText({
  title,
  edition,
  clause,
}: Pick<SettingRow, 'title' | 'edition' | 'clause'>): string {
  // a standard is called by its number and year, `BS 5837:2012`; other sources have their edition after a comma
  const joint = /\d$/.test(title) ? ':' : ', ';
  return [[title, edition].filter((part) => part !== '').join(joint), clause]
    .filter((part) => part !== '')
    .join(', ');
}
