import type { SettingRow } from '@footmark/site';
import { atStart } from '../named';

/** Where a value of a table is known from, and how well. */
export function basisText({ title, edition, clause, basis }: SettingRow): string {
  // a standard is called by its number and year, `BS 5837:2012`; other sources have their edition after a comma
  const joint = /\d$/.test(title) ? ':' : ', ';
  const source = [[title, edition].filter((part) => part !== '').join(joint), clause]
    .filter((part) => part !== '')
    .join(', ');
  switch (basis) {
    case 'practice':
      return `${atStart(source)}.`;
    case 'memory':
      return `${source}; from memory, not verified.`;
    case 'read':
      return `${source}.`;
    case 'computed':
      return `Computed from ${source}.`;
  }
}
