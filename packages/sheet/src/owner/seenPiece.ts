import type { Piece } from '../flow/section';
import { GAP, LINE, SIZE } from '../page/measures';
import type { Item } from '../page/page';
import { cornersOf } from '../page/pageFrame';
import type { SheetSetting } from '../setting';
import { stacked, type TextBlock, textBlock } from '../text/textBlock';
import { ownerPlace } from './ownerPlace';
import type { SeenThing } from './seenThings';

/** A picture is no higher than this, mm. */
const HIGHEST_MM = 46;
const MOST_LINES = 6;

/** One thing that is wrong with the pipe: what, how bad, where, what was noted, its pictures. */
export function seenPiece({ marks, severity }: SeenThing, width: number, setting: SheetSetting): Piece {
  const { words, inks, site } = setting;
  const { sheet } = words;
  const [first] = marks;
  const labels = marks.map((m) => m.label).join(', ');
  const bad = severity === null ? '' : words.severityName(severity);
  const notes = [...new Set(marks.map((m) => m.reading.note).filter((n) => n !== ''))];
  const actions = [...new Set(marks.flatMap((m) => m.reading.action ?? []))];
  const small = { size: SIZE.small, colour: inks.assumed, weight: 'regular', mostLines: MOST_LINES } as const;
  return stacked(
    [
      ...marks.flatMap((m) => pictureOf(m.reading.photo, width, setting)),
      stacked([
        textBlock(
          [labels, bad].filter((t) => t !== '').join('  ·  '),
          { ...small, weight: 'bold' },
          width,
          setting,
        ),
        textBlock(
          sheet.ownerSeenName(first.reading.seen),
          { size: SIZE.heading, weight: 'bold', colour: inks.ink },
          width,
          setting,
        ),
        textBlock(
          sheet.ownerPlaceText(ownerPlace(first, setting), site.units),
          { size: SIZE.body, weight: 'regular', colour: inks.ink },
          width,
          setting,
        ),
        ...notes.map((note) => textBlock(sheet.ownerNote(note), small, width, setting)),
        ...actions.map((action) =>
          textBlock(
            sheet.ownerActionName(action),
            { ...small, colour: inks.ink, weight: 'bold' },
            width,
            setting,
          ),
        ),
      ]),
    ],
    GAP.hair,
  );
}

/** As wide as its column, or less where it would be too high; nothing for a picture that is not at hand. */
function pictureOf(photo: string | undefined, width: number, setting: SheetSetting): readonly TextBlock[] {
  const picture = photo === undefined ? undefined : setting.options.pictures?.get(photo);
  if (photo === undefined || picture === undefined || picture.width <= 0 || picture.height <= 0) return [];
  const scale = Math.min(width / picture.width, HIGHEST_MM / picture.height);
  const size = { width: picture.width * scale, height: picture.height * scale };
  return [
    {
      height: size.height,
      paint: ({ x, y }): readonly Item[] => [
        { is: 'image', picture: photo, box: { x, y, ...size } },
        {
          is: 'lines',
          lines: [cornersOf({ x, y, ...size })],
          closed: true,
          pen: { colour: setting.inks.ink, width: LINE.hair },
        },
      ],
    },
  ];
}
