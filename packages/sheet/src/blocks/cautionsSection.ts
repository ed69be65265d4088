import { type CautionCode, cautionCodes } from '@footmark/words';
import type { Section } from '../flow/section';
import { GAP, SIZE } from '../page/measures';
import type { SheetSetting } from '../setting';
import { stacked, textBlock } from '../text/textBlock';

const CALL: CautionCode = 'call-before-digging';

/** All that must be said to whoever digs, the call first. */
export function cautionsSection(setting: SheetSetting): Section {
  const { words, inks, options } = setting;
  const codes = [CALL, ...cautionCodes.filter((c) => c !== CALL)].filter(
    // nothing is bored where only marks are painted
    (code) => code !== 'bored' || options.kind === 'reroute',
  );
  return {
    heading: words.sheet.heading('cautions'),
    columns: options.paper.turned ? 3 : 2,
    gap: GAP.small,
    make: (width) => ({
      pieces: codes.map((code) => {
        const { title, text } = words.cautionText(code);
        return stacked([
          textBlock(title, { size: SIZE.body, weight: 'bold', colour: inks.ink }, width, setting),
          textBlock(text, { size: SIZE.small, weight: 'regular', colour: inks.ink }, width, setting),
        ]);
      }),
    }),
  };
}
