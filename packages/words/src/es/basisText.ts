import type { SettingRow } from '@footmark/site';
import { sourceText } from '../sourceText';

/** Where a value of a table is known from, and how well. Sources keep the title and the clause under which they are found. */
export function basisText(row: SettingRow): string {
  const source = sourceText(row);
  switch (row.basis) {
    case 'practice':
      return 'Práctica común, sin fuente.';
    case 'memory':
      return `${source}; de memoria, sin verificar.`;
    case 'read':
      return `${source}.`;
    case 'computed':
      return `Calculado a partir de ${source}.`;
  }
}
