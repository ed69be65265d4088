import { actionIds, type Mark, type UnseenGap } from '@footmark/site';
import type { Section } from '../flow/section';
import { GAP, SIZE } from '../page/measures';
import type { SheetSetting } from '../setting';
import { textBlock } from '../text/textBlock';
import { seenPiece } from './seenPiece';
import { seenThings } from './seenThings';

/** What was seen, what was not and why, what is advised and what stays uncertain. */
export function ownerSections(setting: SheetSetting): readonly Section[] {
  const { words, derived, site, options } = setting;
  const { sheet } = words;
  const things = seenThings(site, derived.marks);
  const columns = options.paper.turned ? 3 : 2;
  const text = (heading: Parameters<typeof sheet.heading>[0], said: readonly string[]): Section => ({
    heading: sheet.heading(heading),
    columns: 1,
    gap: GAP.small,
    make: (width) => ({ pieces: said.map((s) => paragraph(s, width, setting)) }),
  });
  return [
    {
      heading: sheet.heading('seen'),
      columns,
      gap: GAP.medium,
      make: (width) => ({
        pieces:
          things.length === 0
            ? [paragraph(sheet.ownerNothingSeen(), width, setting)]
            : things.map((thing) => seenPiece(thing, width, setting)),
      }),
    },
    text(
      'not-seen',
      derived.unseen.length === 0
        ? [sheet.ownerAllSeen()]
        : derived.unseen.map((gap) => gapText(gap, setting)),
    ),
    text('advised', adviceTexts(setting)),
    text('uncertain', uncertainTexts(setting)),
  ];
}

export function paragraph(text: string, width: number, setting: SheetSetting) {
  return textBlock(text, { size: SIZE.body, weight: 'regular', colour: setting.inks.ink }, width, setting);
}

function gapText({ path, from, to, upstream, downstream }: UnseenGap, setting: SheetSetting): string {
  const { words, site, derived } = setting;
  const why = [upstream, downstream].flatMap((end) =>
    end === null ? [] : (words.stoppedText(end, site) ?? []),
  );
  const length = derived.paths.get(path)?.length ?? to;
  return words.sheet.ownerGapText(
    {
      pipe: words.targetName({ kind: 'path', id: path }, site),
      length: to - from,
      whole: to - from > length - 1e-3,
      why,
    },
    site.units,
  );
}

/** By what is to be done, in the order of how much it is, the marks that it is advised at. */
function adviceTexts({ words, derived }: SheetSetting): readonly string[] {
  const said = actionIds.flatMap((action) => {
    const labels = derived.marks.filter((m) => m.reading.action === action).map((m) => m.label);
    return labels.length === 0 ? [] : [words.sheet.ownerAdvice(action, labels)];
  });
  return said.length === 0 ? [words.sheet.ownerNoAdvice()] : said;
}

function uncertainTexts({ words, derived, fit, site }: SheetSetting): readonly string[] {
  const { sheet } = words;
  const placed = derived.marks.filter((m) => m.place !== null);
  const halves = placed.flatMap((m) => zoneOf(m, fit));
  const unknown = placed.filter((m) => !hasDepth(m, derived));
  return [
    ...(halves.length === 0 ? [] : [sheet.ownerZoneText(Math.max(...halves), site.units)]),
    sheet.ownerDepthText(unknown.length === 0),
    ...(placed.length < derived.marks.length ? [sheet.noPlace()] : []),
    ...sheet.ownerAlways(),
  ];
}

function zoneOf({ reading }: Mark, fit: SheetSetting['fit']): readonly number[] {
  const half = fit?.marks.get(reading.id)?.zone.semiMajor;
  return half !== undefined && Number.isFinite(half) ? [half] : [];
}

function hasDepth({ place }: Mark, { profiles }: SheetSetting['derived']): boolean {
  return place !== null && (profiles.get(place.path)?.points.length ?? 0) > 0;
}
