import type { SettingRow } from '@footmark/site';
import { atStart } from '../named';

/** Where a value of a table is known from, and how well. */
export function basisText({ title, edition, clause, basis }: SettingRow): string {
  const source = [[title, edition].filter((part) => part !== '').join(':'), clause]
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
