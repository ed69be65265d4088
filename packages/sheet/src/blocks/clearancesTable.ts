import type { EdgeClearance } from '@footmark/dig';
import { ruleOf } from '@footmark/site';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { tableSection } from '../table/tableSection';

/** Of everything that is near, this many are told, the worst first; the others are counted. */
const MOST = 10;

/** What pipes, marks and digs come near to, against what is asked; without what is far enough. */
export function clearancesTable(setting: SheetSetting): Section {
  const { inTheWay, words, site } = setting;
  const { sheet } = words;
  const telling = inTheWay.clearances.filter(
    (c) => c.verdict !== null && c.verdict !== 'meets' && c.verdict !== 'serves',
  );
  const left = telling.length - MOST;
  return tableSection(
    sheet.heading('clearances'),
    [
      { head: sheet.column('of'), share: 30 },
      { head: sheet.column('to'), share: 34 },
      { head: sheet.column('apart'), share: 60 },
      { head: sheet.column('rule'), share: 60 },
    ],
    telling
      .slice(0, MOST)
      .map((c) => [
        { main: subjectName(c, setting) },
        { main: words.targetName({ kind: 'feature', id: c.feature }, site) },
        { more: [words.obstacleText(c, site)] },
        { more: c.rule === null ? [] : [words.basisText(ruleOf(site, c.rule).row)] },
      ]),
    setting,
    { notes: left > 0 ? [sheet.moreNear(left)] : [] },
  );
}

function subjectName({ of }: EdgeClearance, { words, site, derived }: SheetSetting): string {
  switch (of.is) {
    case 'path':
      return words.targetName({ kind: 'path', id: of.id }, site);
    case 'mark':
      return derived.marks.find((m) => m.reading.id === of.reading)?.label ?? of.reading;
    case 'outline':
      return words.targetName({ kind: 'dig', id: of.dig }, site);
  }
}
