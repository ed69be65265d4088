import {
  actionIds,
  observationKindIds,
  type Run,
  type Site,
  standardBends,
  type Units,
  type Visit,
} from '@footmark/site';
import { sheetColumns, sheetFacts, sheetHeadings, sheetLegends } from '../en/sheetNames';
import {
  type SheetColumn,
  type SheetFact,
  type SheetHeading,
  type SheetLegend,
  type SheetWords,
  sheetKinds,
} from '../sheetWords';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { need } from './need';
import { units, yard } from './weighedYard';

type SheetSays = (sheet: SheetWords) => readonly string[];

const keysOf = <Key extends string>(table: Readonly<Record<Key, string>>) => Object.keys(table) as Key[]; // of a const table

const metric: Units = { length: 'm', diameter: 'mm', direction: 'azimuth' };
const run = need(yard.runs[0]);
const visit = (id: string, date?: string): Visit => ({
  id,
  purpose: 'first-look',
  note: '',
  ...(date === undefined ? {} : { date }),
});
const seenBy = (runs: Run[], visits: Visit[]): Site => ({ ...yard, runs, visits });

const place = { along: 19.75, entry: 'House', depth: 2, near: { thing: 'Maple', distance: 0.6 } };
const gap = { pipe: 'Lateral', length: 3.048, whole: false, why: [] };

/** What a sheet says; a function without a sample does not compile. */
const everySheetWord: { readonly [Name in keyof SheetWords]: SheetSays } = {
  title: (s) => sheetKinds.map((kind) => s.title(kind)),
  heading: (s) => keysOf<SheetHeading>(sheetHeadings).map((heading) => s.heading(heading)),
  continued: (s) => [s.continued('A1')],
  column: (s) => keysOf<SheetColumn>(sheetColumns).map((column) => s.column(column)),
  legend: (s) => keysOf<SheetLegend>(sheetLegends).map((entry) => s.legend(entry)),
  fact: (s) => keysOf<SheetFact>(sheetFacts).map((fact) => s.fact(fact)),
  unnamed: (s) => [s.unnamed()],
  sheetOf: (s) => [s.sheetOf(2, 3)],
  unitsText: (s) => (['ft', 'ft-in', 'm'] as const).map((length) => s.unitsText({ ...units, length })),
  scaleText: (s) => [s.scaleText(120, 10), s.scaleText(137, null)],
  noScale: (s) => [s.noScale()],
  printActualSize: (s) => [s.printActualSize()],
  northText: (s) => [true, false].map((known) => s.northText(known)),
  detailName: (s) => [s.detailName('B')],
  detailText: (s) => [s.detailText('B', '1:25')],
  matchText: (s) => [s.matchText(2)],
  sideName: (s) => (['left', 'right'] as const).map((side) => s.sideName(side)),
  tieNote: (s) => [s.tieNote()],
  holeNote: (s) => [s.holeNote()],
  depthNote: (s) => [true, false].map((even) => s.depthNote(even)),
  stillStandsNote: (s) => [s.stillStandsNote()],
  wasteNote: (s) => [s.wasteNote()],
  depthUnknown: (s) => [s.depthUnknown()],
  noPlace: (s) => [s.noPlace()],
  noTies: (s) => [s.noTies()],
  underBuilding: (s) => [s.underBuilding('House')],
  paintBeside: (s) => [s.paintBeside(1.2, units)],
  invertText: (s) => [s.invertText(30, units), s.invertText(30, metric)],
  exaggerationText: (s) => [1, 5].map((factor) => s.exaggerationText(factor)),
  pipeItem: (s) => [s.pipeItem('Lateral', '4″')],
  bendItem: (s) => [s.bendItem(need(standardBends[0]).name, Math.PI / 8), s.bendItem(null, -0.54)],
  cleanoutItem: (s) => [s.cleanoutItem()],
  ticketText: (s) => [s.ticketText('4711')],
  nothingFound: (s) => [s.nothingFound()],
  moreNear: (s) => [1, 3].map((count) => s.moreNear(count)),
  fewerNotes: (s) => [1, 3].map((count) => s.fewerNotes(count)),
  ownerIntro: (s) =>
    [
      s.ownerIntro(seenBy([], []), 0),
      s.ownerIntro(seenBy([run], [visit('v1')]), 1),
      s.ownerIntro(seenBy([run, run], [visit('v1', '2025-03-09')]), 2),
      s.ownerIntro(seenBy([run, run, run], [visit('v1', '2025-03-09'), visit('v2', '2025-04-10')]), 3),
    ].flat(),
  ownerSeenName: (s) => observationKindIds.map((kind) => s.ownerSeenName(kind)),
  ownerPlaceText: (s) =>
    [
      place,
      { ...place, entry: null, depth: -0.1, near: null },
      { ...place, depth: null, near: { thing: '811', distance: 0 } },
    ].map((each) => s.ownerPlaceText(each, units)),
  ownerNote: (s) => [s.ownerNote('811')],
  ownerActionName: (s) => actionIds.map((action) => s.ownerActionName(action)),
  ownerAdvice: (s) => [s.ownerAdvice('line', ['A1']), s.ownerAdvice('watch', ['A1', 'A2', 'B1'])],
  ownerNoAdvice: (s) => [s.ownerNoAdvice()],
  ownerNothingSeen: (s) => [s.ownerNothingSeen()],
  ownerGapText: (s) => [
    s.ownerGapText(gap, units),
    s.ownerGapText({ ...gap, whole: true, why: ['A1: 811.'] }, metric),
  ],
  ownerAllSeen: (s) => [s.ownerAllSeen()],
  ownerZoneText: (s) => [s.ownerZoneText(0.8, units)],
  ownerDepthText: (s) => [true, false].map((known) => s.ownerDepthText(known)),
  ownerAlways: (s) => s.ownerAlways(),
};

export const everySheetText = {
  sheet: (w) => Object.values(everySheetWord).flatMap((says) => says(w.sheet)),
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
