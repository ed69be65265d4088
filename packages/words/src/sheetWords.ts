import type { ActionWord, ObservationKind, Side, Site, Units } from '@footmark/site';

/** What a sheet is for: who paints and digs, who lays the new pipe, the file, and the owner. */
export const sheetKinds = ['mark-out', 'reroute', 'as-built', 'findings'] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** What a part of a sheet is headed by. */
export type SheetHeading =
  | 'legend'
  | 'key-plan'
  | 'details'
  | 'before-digging'
  | 'one-call'
  | 'marks'
  | 'profile'
  | 'in-the-way'
  | 'clearances'
  | 'cautions'
  | 'set-out'
  | 'materials'
  | 'drain'
  | 'as-built'
  | 'on-the-phone'
  | 'seen'
  | 'not-seen'
  | 'advised'
  | 'uncertain';

/** What a column of a table is headed by. */
export type SheetColumn =
  | 'mark'
  | 'seen'
  | 'station'
  | 'depth'
  | 'tie-1'
  | 'tie-2'
  | 'side'
  | 'check'
  | 'hole'
  | 'point'
  | 'fitting'
  | 'from-before'
  | 'of'
  | 'to'
  | 'apart'
  | 'rule'
  | 'amount'
  | 'item';

/** A line or symbol of the plan that is not a kind of feature. */
export type SheetLegend =
  | 'pipe-existing'
  | 'pipe-proposed'
  | 'pipe-as-built'
  | 'mark-defect'
  | 'mark-landmark'
  | 'search-zone'
  | 'not-seen'
  | 'tie-point'
  | 'station'
  | 'set-out'
  | 'set-out-bend'
  | 'drain-point'
  | 'drain-bend'
  | 'excavation'
  | 'root-zone'
  | 'paint-beside'
  | 'by-eye';

/** A line of the title block. */
export type SheetFact = 'prepared-by' | 'prepared-for' | 'date' | 'scale' | 'sheet' | 'units';

/**
 * Where one thing is, to its owner: `along` is metres of pipe from where the camera went in (`entry`, by its name), `depth` metres below
 * the ground, `near` the nearest thing and how far (m) it is. What is not known is null.
 */
export type OwnerPlace = {
  readonly along: number;
  readonly entry: string | null;
  readonly depth: number | null;
  readonly near: { readonly thing: string; readonly distance: number } | null;
};

/** A stretch that no camera saw: of which pipe, how much of it (m) or the whole, and why as `stoppedText` says it. */
export type OwnerGap = {
  readonly pipe: string;
  readonly length: number;
  readonly whole: boolean;
  readonly why: readonly string[];
};

/** What only a sheet on paper says. Lengths in metres; names of pipes and things as `targetName` gives them. */
export type SheetWords = {
  title(kind: SheetKind): string;
  heading(heading: SheetHeading): string;
  /** Of a part that goes on from the page before. */
  continued(heading: string): string;
  column(column: SheetColumn): string;
  legend(entry: SheetLegend): string;

  fact(fact: SheetFact): string;
  /** In place of a site's name. */
  unnamed(): string;
  /** Which sheet of how many. */
  sheetOf(number: number, of: number): string;
  unitsText(units: Units): string;
  /** How large a plan is drawn: `feetToAnInch` where that is a whole number and the site is in feet, else null. */
  scaleText(denominator: number, feetToAnInch: number | null): string;
  /** In place of a scale on a page without a plan. */
  noScale(): string;
  printActualSize(): string;
  northText(known: boolean): string;
  /** On and over a piece of plan that is drawn again larger. */
  detailName(letter: string): string;
  detailText(letter: string, scale: string): string;
  /** On a match line: the sheet that goes on from it. */
  matchText(sheet: number): string;

  /** Where the person stands: of the base of two tapes, looking from the first reference to the second. */
  sideName(side: Side): string;
  /** At the foot of tables: how tapes are read, what a hole and a depth are. */
  tieNote(): string;
  holeNote(): string;
  depthNote(evenGround: boolean): string;
  stillStandsNote(): string;
  wasteNote(): string;
  /** In place of what is not known. */
  depthUnknown(): string;
  noPlace(): string;
  noTies(): string;
  underBuilding(name: string): string;
  /** Of a mark that is painted beside its place. */
  paintBeside(distance: number, units: Units): string;
  invertText(level: number, units: Units): string;
  exaggerationText(factor: number): string;
  pipeItem(material: string, diameter: string): string;
  /** A bend by its standard name (`1/8`; null: none that turns so far) and by how far (rad) it turns. */
  bendItem(name: string | null, turn: number): string;
  cleanoutItem(): string;
  ticketText(ticket: string): string;
  nothingFound(): string;
  /** That so many notes that press nobody are left out. */
  fewerNotes(count: number): string;
  /** That so many more come nearer than asked than are listed. */
  moreNear(count: number): string;

  /** To the owner, in plain words: what the camera did, and how many things are told of. */
  ownerIntro(site: Site, things: number): readonly string[];
  ownerSeenName(kind: ObservationKind): string;
  ownerPlaceText(place: OwnerPlace, units: Units): string;
  ownerNote(note: string): string;
  ownerActionName(action: ActionWord): string;
  ownerAdvice(action: ActionWord, labels: readonly string[]): string;
  ownerNoAdvice(): string;
  ownerNothingSeen(): string;
  ownerGapText(gap: OwnerGap, units: Units): string;
  ownerAllSeen(): string;
  /** Within how far (m) of its mark a thing lies, 95 of 100 times, at the worst of them. */
  ownerZoneText(half: number, units: Units): string;
  ownerDepthText(known: boolean): string;
  ownerAlways(): readonly string[];
};
