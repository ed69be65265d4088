import type { Drawing } from '@footmark/drawing';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { legendBlock } from './legendBlock';
import { legendEntries } from './legendEntries';

/** The legend over the whole width, where beside the plan there is no room for it. */
export function legendSection(drawing: Drawing, setting: SheetSetting): Section {
  return {
    heading: setting.words.sheet.heading('legend'),
    columns: 1,
    gap: 0,
    make: (width) => ({ pieces: [legendBlock(legendEntries(drawing, setting), width, setting)] }),
  };
}
