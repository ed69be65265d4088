import type { Section } from '../flow/section';
import { GAP } from '../page/measures';
import type { SheetSetting } from '../setting';
import { profileStrip } from './profileStrip';

/** Pipes in elevation, one below the other; pipes of which no depth is known are left out. */
export function profileSection(paths: readonly string[], setting: SheetSetting): Section {
  return {
    heading: setting.words.sheet.heading('profile'),
    columns: 1,
    gap: GAP.medium,
    make: (width) => ({
      pieces: paths.flatMap((path) => profileStrip(path, width, setting) ?? []),
    }),
  };
}
