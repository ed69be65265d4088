import type { AnyDigFinding } from '@footmark/dig';
import { type Finding, ruleOf } from '@footmark/site';
import type { Piece, Section } from '../flow/section';
import { GAP, LINE, SIZE } from '../page/measures';
import type { SheetSetting } from '../setting';
import { stacked, textBlock } from '../text/textBlock';

/** What stands in the way and what is wrong with the measurements, the most pressing first, each with the rule that asks. Notes are counted only. */
export function findingsSection(setting: SheetSetting): Section {
  const { inTheWay, derived, words } = setting;
  const pressing = inTheWay.findings.filter((f) => f.severity !== 'note');
  const wrong = derived.findings.filter((f) => f.severity !== 'note');
  const left = inTheWay.findings.length - pressing.length + derived.findings.length - wrong.length;
  return {
    heading: words.sheet.heading('in-the-way'),
    columns: 2,
    gap: GAP.medium,
    make: (width) => ({
      pieces: [
        ...pressing.map((f) => digPiece(f, width, setting)),
        ...wrong.map((f) => sitePiece(f, width, setting)),
        ...(pressing.length + wrong.length === 0 ? [plain(words.sheet.nothingFound(), width, setting)] : []),
        ...(left === 0 ? [] : [plain(words.sheet.fewerNotes(left), width, setting)]),
        ...(pressing.some((f) => f.rule !== null) ? [plain(words.modelValuesText(), width, setting)] : []),
      ],
    }),
  };
}

function digPiece(finding: AnyDigFinding, width: number, setting: SheetSetting): Piece {
  const { words, site } = setting;
  const subject = words.digFindingSubject(finding, site);
  const title = words.digFindingTitle(finding, site);
  const { text, cure } = words.digFindingText(finding, site);
  const rule = finding.rule === null ? [] : [words.basisText(ruleOf(site, finding.rule).row)];
  return item(
    {
      tag: words.digSeverityName(finding.severity),
      title: subject === '' ? title : `${subject}: ${title}`,
      text: [text, cure].filter((t) => t !== '').join(' '),
      rule,
      must: finding.severity === 'must',
    },
    width,
    setting,
  );
}

function sitePiece(finding: Finding, width: number, setting: SheetSetting): Piece {
  const { words, site } = setting;
  const { text, cure } = words.findingText(finding, site);
  return item(
    {
      tag: words.findingSeverityName(finding.severity),
      title: text,
      text: cure,
      rule: [],
      must: finding.severity === 'error',
    },
    width,
    setting,
  );
}

type Said = Readonly<{ tag: string; title: string; text: string; rule: readonly string[]; must: boolean }>;

/** Of the bar beside a finding: heavy where it must be minded, thin else. */
const BAR = { must: 1.1, other: LINE.fine, inset: 2.6 } as const;

function item({ tag, title, text, rule, must }: Said, width: number, setting: SheetSetting): Piece {
  const { inks } = setting;
  const inner = width - BAR.inset;
  const block = stacked([
    textBlock(tag, { size: SIZE.fine, weight: 'bold', colour: inks.assumed }, inner, setting),
    textBlock(title, { size: SIZE.body, weight: 'bold', colour: inks.ink }, inner, setting),
    textBlock(text, { size: SIZE.small, weight: 'regular', colour: inks.ink, mostLines: 9 }, inner, setting),
    ...rule.map((r) =>
      textBlock(
        r,
        { size: SIZE.fine, weight: 'regular', colour: inks.assumed, mostLines: 3 },
        inner,
        setting,
      ),
    ),
  ]);
  const bar = must ? BAR.must : BAR.other;
  return {
    height: block.height,
    paint: ({ x, y }) => [
      {
        is: 'lines',
        lines: [
          [
            { x: x + bar / 2, y },
            { x: x + bar / 2, y: y + block.height },
          ],
        ],
        closed: false,
        pen: { colour: inks.ink, width: bar },
      },
      ...block.paint({ x: x + BAR.inset, y }),
    ],
  };
}

function plain(text: string, width: number, setting: SheetSetting): Piece {
  return textBlock(
    text,
    { size: SIZE.small, weight: 'regular', colour: setting.inks.assumed },
    width,
    setting,
  );
}
