import type { SettingRow } from '@footmark/site';
import { atStart } from '../named';
import { sourceText } from '../sourceText';

/** Where a value of a table is known from, and how well. */
export function basisText(row: SettingRow): string {
  const source = sourceText(row);
  switch (row.basis) {
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
