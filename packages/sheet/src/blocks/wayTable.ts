import type { Way } from '@footmark/reroute';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { tableSection } from '../table/tableSection';

/** What a planned pipe takes: length, fall, cover, trench, roots, whom to ask. */
export function wayTable(way: Way, setting: SheetSetting): Section {
  const { words, site } = setting;
  const { sheet } = words;
  const name = words.targetName({ kind: 'path', id: way.path.id }, site);
  return tableSection(
    `${sheet.heading('drain')}: ${name}`,
    [
      { head: sheet.column('item'), share: 1 },
      { head: sheet.column('amount'), share: 2 },
    ],
    words.wayRows(way, site).map((row) => [{ more: [row.name] }, { main: row.text }]),
    setting,
    { abreast: 2 },
  );
}
