import { ok, type Result } from '@footmark/geometry';
import { flowSections } from './flow/flowSections';
import { letteringOf, type SheetFonts } from './font/sheetFonts';
import { sheetContent } from './kinds/sheetContent';
import { legendSection } from './legend/legendSection';
import { inksOf } from './page/inks';
import type { Item, Page, Sheet } from './page/page';
import { bodyBox, pageFrame } from './page/pageFrame';
import { paperSize } from './page/paper';
import { detailSection } from './plan/detailSection';
import type { PlanPages } from './plan/laidPlan';
import { planPages } from './plan/planPages';
import { planScaleText } from './plan/planScaleText';
import type { SheetOptions, SheetSetting, SheetSource } from './setting';

const NO_PLAN: PlanPages = {
  pages: [],
  rest: null,
  denominator: null,
  drawing: { layers: [], bounds: null },
  details: [],
  legendFollows: false,
};

/**
 * A site on paper: pages with everything in its place, the same for every renderer. Throws a RangeError for fonts that are no TrueType
 * files. `too-many-sheets`: the scale asked for would take more pages than anyone pastes together.
 */
export function sheetOf(
  source: SheetSource,
  options: SheetOptions,
  fonts: SheetFonts,
): Result<Sheet, 'too-many-sheets'> {
  const setting: SheetSetting = {
    ...source,
    options,
    inks: inksOf(options.ink),
    lettering: letteringOf(fonts),
  };
  const { plan, sections } = sheetContent(setting);
  const planned = plan === null ? ok(NO_PLAN) : planPages(plan, setting);
  if (!planned.ok) return planned;
  const { pages, rest, denominator, drawing, details, legendFollows } = planned.value;
  const body = bodyBox(setting);
  const all = [
    ...(details.length === 0 ? [] : [detailSection(details, drawing, setting)]),
    ...(legendFollows ? [legendSection(drawing, setting)] : []),
    ...sections,
  ];
  const [first = [], ...others] = flowSections(all, rest ?? body, body, setting);
  const shared = pages.at(-1);
  const contents: readonly (readonly Item[])[] =
    rest !== null && shared !== undefined
      ? [...pages.slice(0, -1), [...shared, ...first], ...others]
      : [...pages, ...(first.length === 0 ? [] : [first]), ...others];
  const scale = denominator === null ? null : planScaleText(denominator, source);
  const { width, height } = paperSize(options.paper);
  const framed = (contents.length === 0 ? [[]] : contents).map(
    (items, i, { length }): Page => ({
      width,
      height,
      items: [
        ...items,
        ...pageFrame({ number: i + 1, of: length, scale: i < pages.length ? scale : null }, setting),
      ],
    }),
  );
  return ok({
    title: [source.site.name, source.words.sheet.title(options.kind)].filter((t) => t !== '').join(', '),
    language: source.words.language,
    date: options.date,
    pages: framed,
    pictures: options.pictures ?? new Map(),
  });
}
