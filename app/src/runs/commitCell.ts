import type { Reading, ReadingFacts, Run } from '@footmark/site';
import { currentSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { counterUnit } from './counterUnit';
import type { Column } from './readingColumns';
import { changeFacts } from './readingFacts';
import { keepCell } from './runDrafts';

/** Takes over what was typed into a cell. What is no value, or is refused, stays in the cell with the reason. */
export function commitCell(run: Run, id: string, column: Column, text: string): void {
  const site = currentSite();
  const reading = site.runs.find((r) => r.id === run.id)?.readings.find((r) => r.id === id);
  if (reading === undefined) return;
  const unit = counterUnit(site.units);
  if (text === column.text(reading, unit)) {
    keepCell(id, column.id, null);
    return;
  }
  const read = column.read(text, unit);
  if (!read.ok) keepCell(id, column.id, { text, problem: read.problem });
  else if (isAsItWas(reading, read.change) || changeFacts(run, reading, read.change))
    keepCell(id, column.id, null);
  else keepCell(id, column.id, { text, problem: useWorkbench.getState().notice?.text ?? 'Not done.' });
}

function isAsItWas(reading: Reading, change: ReadingFacts): boolean {
  const before: Readonly<Record<string, unknown>> = reading;
  return Object.entries(change).every(
    ([key, value]) => JSON.stringify(value) === JSON.stringify(before[key]),
  );
}
