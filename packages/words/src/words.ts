import type {
  AnyDigFinding,
  BoreUnder,
  DigSeverity,
  EdgeClearance,
  Excavation,
  HoldingRoots,
  LandCrossing,
  LandStretch,
  OneCallState,
  TreeAssumption,
  TreeZone,
  Whose,
  WhoseAt,
} from '@footmark/dig';
import type { GridFactors, GridNote, GridSystem, GridUnit } from '@footmark/grid';
import type { LinkProblem } from '@footmark/link';
import type { Price, PriceItem, Way, WayIs } from '@footmark/reroute';
import type { Blocked, Relaxation, RequestProblem, RouteFault } from '@footmark/route';
import type {
  ActionWord,
  BlunderGroup,
  Clearance,
  DefinitionProblem,
  Derived,
  EditProblem,
  FeatureKind,
  FeatureLayer,
  Finding,
  FitObservation,
  GapEnd,
  Head,
  LegProblem,
  LevelSource,
  Locate,
  Mark,
  MarkReach,
  MarkState,
  ObservationKind,
  ObservationTag,
  OneCall,
  OpenFailure,
  PairExplanation,
  ParseFailure,
  Path,
  PathProfile,
  PipeMaterial,
  Protection,
  Reading,
  ReferencePoint,
  RuleChange,
  RuleGroup,
  RuleName,
  RuleSetId,
  RunEnd,
  RunsFit,
  SearchZone,
  SetOutBend,
  SetOutPlace,
  SettingRow,
  Severity,
  SeverityWord,
  Shape,
  SigmaName,
  Site,
  SiteAccuracy,
  SlopeVerdict,
  Soil,
  StillThere,
  Target,
  Tie,
  Ties,
  TreeRuleId,
  Units,
  Visit,
  VisitComparison,
  VisitPurpose,
  ZoneSource,
} from '@footmark/site';
import type { BundleFailure, BundleNote } from './bundle';
import type { CautionCode } from './caution';
import type { RunDirection, SpotKind, ZeroKind } from './codes';
import type { CrewWords } from './crewWords';
import type {
  IncomingFinding,
  IncomingNote,
  IncomingProblemFacts,
  IncomingQuestion,
  PlacingProblem,
} from './incoming';
import type { ArcProblem, SpotProblem } from './measureProblem';
import type { PairProblem } from './pairProblem';
import type { CardThing, Said, SaidOfFile, WayRow } from './said';
import type { SheetWords } from './sheetWords';
import type { TableProblemFacts } from './tableProblem';
import type { TraceStep } from './traceStep';

/**
 * Everything that a program says of a site, in one language. A language is one folder that satisfies this type. Names are in
 * sentence case for labels. The two functions that take text throw a RangeError for one that no table has.
 */
export type Words = {
  /** BCP 47 tag. */
  readonly language: string;

  /** What the crew view says. */
  readonly crew: CrewWords;
  /** What only the sheet on paper says. */
  readonly sheet: SheetWords;

  featureKindName(kind: FeatureKind): string;
  fieldName(kind: FeatureKind, field: string): string;
  choiceName(value: string): string;
  shapeName(shape: Shape): string;
  layerName(layer: FeatureLayer): string;
  observationName(kind: ObservationKind): string;
  materialName(material: PipeMaterial): string;
  pathStateName(state: Path['state']): string;
  directionName(direction: RunDirection): string;
  zeroName(at: ZeroKind): string;
  spotName(by: SpotKind): string;
  /** Where on the wall of a pipe something is, looking along the run, by the hours of a clock. */
  clockText(clock: NonNullable<Reading['clock']>): string;
  /** How bad what was seen is. */
  severityName(severity: SeverityWord): string;
  /** What is advised to be done about it. */
  actionName(action: ActionWord): string;
  /** Why the camera went no further. */
  runEndName(end: RunEnd): string;
  visitPurposeName(purpose: VisitPurpose): string;
  /** A visit by its day and what it was for. */
  visitName(visit: Visit): string;
  /** What has become of things that two visits are compared by. */
  comparedText(fate: keyof VisitComparison): { readonly title: string; readonly text: string };
  /** How a thing that two visits saw has fared, and how far apart they have it. */
  faredText(thing: StillThere, units: Units): string;
  /** Where a camera went no further, and why; null where it was not stopped. */
  stoppedText(end: GapEnd, site: Site): string | null;
  /** A day of the calendar that a site writes as `2025-03-09`. */
  dateText(date: string): string;
  /** Which part of the camera head stood at the place of the zero. */
  headPartName(part: Head['zeroed']): string;
  /** What levels say of a slope. */
  slopeVerdictName(verdict: SlopeVerdict): string;
  /** What told of a pipe's level, such as `Tap on the main, invert`. */
  levelSourceName(source: LevelSource, site: Site): string;
  /** What the heights of a profile are counted from, what they come to and how far they can be trusted. */
  profileHeightsText(profile: PathProfile): string;
  /** What a standard deviation is of. */
  sigmaName(name: SigmaName): string;
  findingSeverityName(severity: Severity): string;
  yesNo(value: boolean): string;
  /** How unsure or how far off (m) something is; beside the number that it is about with its sign, `± 0.8 ft`. */
  sureText(metres: number, units: Pick<Units, 'length'>): string;
  giveOrTakeText(metres: number, units: Pick<Units, 'length'>): string;
  ruleName(rule: RuleName): string;
  ruleGroupName(group: RuleGroup): string;
  ruleSetName(set: RuleSetId): string;
  treeRuleName(rule: TreeRuleId): string;
  soilName(soil: Soil): string;
  protectionName(protection: Protection): string;
  whoseName(whose: Whose): string;

  /** A thing by the name that people gave it, else by its kind and id. */
  targetName(target: Target, site: Site): string;
  referenceName(reference: ReferencePoint, site: Site): string;
  /** What a clearance is to; says so when it is to a centre for want of a size. */
  clearanceName(clearance: Clearance, site: Site): string;
  /** A tape with the point that it starts from, such as `23′ 6½″ from House corner B`. */
  tieText(tie: Tie, site: Site): string;
  /** Beside a locate on the plan: its mark, and how far (m) off the computed place it was found where that is told. */
  locatedText(mark: string, off: number | null, units: Units): string;
  /** Beside a hole on the plan: its size along and across the pipe. */
  digText(hole: SearchZone['hole'], units: Units): string;
  /** Beside a planned dig on the plan: how deep it is and, in full, how wide at the top. */
  excavationText(dug: Pick<Excavation, 'depth' | 'top'>, said: 'full' | 'brief', units: Units): string;
  /** Beside a circle about a tree: by which rule, or of which roots, and its radius (m). */
  rootZoneText(
    zone: Readonly<{ is: 'chosen' | NonNullable<TreeZone['inner']>['is']; rule: TreeRuleId; radius: number }>,
    units: Units,
  ): string;
  /** On a heap of spoil on the plan: how much (m³) it is, loose. */
  spoilText(volume: number, units: Units): string;
  /** On the line that the bottom of a dig may reach: how flat the ground bears below a footing (null: its face reaches further), and how far (m) off that is. */
  footingLineText(influence: number | null, reach: number, units: Units): string;
  /** On a stretch of that length (m) that no camera has seen. */
  unseenText(length: number, units: Units): string;
  /** Beside a line as the evidence puts it; beside what a mark cannot lie outside of. */
  planLineName(line: 'fitted' | 'reach'): string;
  /** On which side of the line between the two references the mark is. */
  sideText(ties: Ties, site: Site): string;
  /** What a place is that sets a pipe out, with its fitting and to which side that turns, such as `1/8 bend, 45° right`. */
  setOutName(place: Pick<SetOutPlace, 'is' | 'bend'>): string;
  /** Where such a bend begins, what is known of its fitting, and what to do where none fits; a sentence each. */
  setOutBendTexts(bend: SetOutBend, units: Units): readonly string[];
  /** How a mark's number came about, in the order of the computation; ends where the computation did. */
  traceSteps(mark: Mark, site: Site, derived: Derived): readonly TraceStep[];

  /** How the evidence of a site's runs and lines stands, and what to do next. */
  fitText(fit: RunsFit, site: Site): Said;
  /** What is said where no fit is there to show. */
  noFitText(state: Readonly<{ busy: boolean; failed: boolean }>): string;
  /** What is said beside a fit of an earlier state of the site; null where it is of this one. */
  oldFitText(state: Readonly<{ busy: boolean; failed: boolean }>): string | null;
  /** How many things may have been seen from two runs, and that saying so helps. */
  suggestedText(count: number): string;
  /** What the misfit of it all means; null where nothing checks anything. */
  misfitText(fit: RunsFit): Said | null;
  /** How surprising a misfit of so many standard deviations is. */
  surpriseText(standardized: number): string;
  /** What an observation of the fit is, as a list calls it. */
  evidenceName(tag: ObservationTag, site: Site): string;
  /** How far off an observation came out; `parts` are all of one name. */
  offText(parts: readonly FitObservation[], site: Site): string;
  /** What a suspect would have to be, were it the only wrong one. */
  blunderText(suspect: BlunderGroup[number], site: Site): string;
  /** Why two readings cannot be said to have seen one thing. */
  pairProblemText(problem: PairProblem): string;
  /** How far apart (m, with its standard deviation) two runs have one thing, and how surprising that is. */
  apartText(apart: Readonly<{ closure: number; sigma: number }>, site: Site): string;
  /** What one thing alone would have to be to make two runs agree. */
  explanationText(explanation: PairExplanation, site: Site): string;
  /** How well the computation agrees with the receiver, or with what was laid bare at marks, and what that is worth. */
  accuracyText(accuracy: SiteAccuracy, site: Site, by?: 'receiver' | 'digging'): Said;
  /** How far from the computed place a receiver found the sonde, and how it was found. */
  foundText(locate: Locate, site: Site): string;
  /** Where a mark can be at all by the cable alone, a sentence each. */
  reachTexts(reach: MarkReach, site: Site): readonly string[];
  /** The nearest of the eight winds to a true azimuth (rad). */
  windText(azimuth: number): string;
  /** Where a value of a table is known from, in a sentence. */
  basisText(row: SettingRow): string;
  /** From what a search zone's size comes. */
  zoneSourceName(source: ZoneSource): string;
  /** How far a mark has come. */
  markStateName(state: MarkState): string;

  findingText(finding: Finding, site: Site): Said;
  /** What stands in the way of a dig or a pipe, how much, and what would cure it; `here`, on its own card, a thing is not named again. */
  digFindingText(finding: AnyDigFinding, site: Site, here?: CardThing): Said;
  /** The same in a few words, and by its name what it is said of, empty for the site itself. */
  digFindingTitle(finding: AnyDigFinding, site: Site, here?: CardThing): string;
  digFindingSubject(finding: AnyDigFinding, site: Site): string;
  /** What a tree was taken as for its zone where nobody gave it. */
  treeTakenText(assumed: readonly TreeAssumption[]): string;
  /** How deep boring under a tree is asked to be, and whether the pipe lies deep enough. */
  boreText(bore: BoreUnder, units: Units): string;
  /** What the roots that hold a tree up are told by. */
  holdingRootsName(is: HoldingRoots['is']): string;
  /** How pressing such findings are, as a heading. */
  digSeverityName(severity: DigSeverity): string;
  /** How it stands with the one-call ticket. */
  oneCallText(state: OneCallState, ticket: OneCall): string;
  /** On how much of a site's pipes somebody else is to be asked; what tells of land by its name, and who holds it. */
  landText(stretches: readonly LandStretch[], units: Units): string;
  landName(feature: string, site: Site): string;
  /** On whose land a place is and, in full, what tells so; empty on the lot and where nothing tells. */
  whoseAtText(land: WhoseAt, said: 'full' | 'brief', site: Site): string;
  /** Where a pipe crosses from one land to another, and what line that is. */
  landCrossingText(crossing: LandCrossing, site: Site): string;
  /** That a rule has another value on a site: who changed it, from what to what, and why. */
  ruleChangeText(change: RuleChange, row: SettingRow, units: Units): string;
  /** How far two things are apart against what is asked. */
  obstacleText(clearance: EdgeClearance, site: Pick<Site, 'units'>): string;
  /** On a dimension line: how far it is to its other end, what that is and, in full, what is asked. */
  dimensionText(clearance: EdgeClearance, other: Target, said: 'full' | 'brief', site: Site): string;
  /** An area given in square metres. */
  areaText(squareMetres: number, units: Units): string;
  /** A volume of ground given in cubic metres. */
  volumeText(cubicMetres: number, units: Units): string;
  /** How fast water runs (m/s), and how much a pipe carries (m³/s). */
  velocityText(metresPerSecond: number, units: Units): string;
  dischargeText(cubicMetresPerSecond: number, units: Units): string;
  /** How much (m) a pipe falls with its flow, and how far (m) below the ground something is; a sign is told in words. */
  dropText(metres: number, units: Units): string;
  belowGroundText(metres: number, units: Units): string;
  /** A share of a whole, in per cent. */
  shareText(share: number): string;
  /** How a side is cut back, given as horizontal over vertical. */
  acrossText(acrossOverDown: number): string;
  /** How a drain could be made good, in a line, and what it takes row by row; the rows are the same for every way. */
  wayName(is: WayIs): string;
  wayText(way: Way, site: Site): string;
  wayRows(way: Way, site: Site): readonly WayRow[];
  /** What something is charged by, such as `A foot of new pipe`. */
  priceItemName(item: PriceItem, units: Units): string;
  /** What a way costs; null: an amount of what has a price is not known. */
  priceText(price: Price | null, units: Units): string;
  /** What keeps a route from being one, the smallest change that opens one, and what is wrong with what is asked for. */
  blockedText(blocked: Blocked, site: Site): string;
  relaxationText(relaxation: Relaxation, site: Site): string;
  /** How the sides of a trench have to be kept, cut back by such a slope at most (horizontal over vertical; 0: they stand straight). */
  sidesText(slope: number): string;
  routeProblemText(problem: RequestProblem, site: Site): Said;
  /** What is wrong with a drawn pipe as a route; its points by their names. */
  routeFaultText(fault: RouteFault, letters: readonly string[], site: Site): Said;
  /** A thing that a route minds. */
  mindedName(id: string, feature: string, site: Site): string;
  /** A grid's zone, datum, unit and code; what its coordinates are counted in, with which foot it is. */
  gridSystemText(system: GridSystem): string;
  gridUnitText(unit: GridUnit): string;
  /** Convergence and factors of a grid at a place, row by row; what must be known beside its coordinates. */
  gridFactorRows(factors: GridFactors): readonly WayRow[];
  gridNoteText(note: GridNote): string;
  /** In a file: what its coordinates are of (null: the plan's own), and what they are counted in; a sentence each. */
  fileFrameText(system: GridSystem | null): string;
  fileUnitText(unit: GridUnit): string;
  /** What a layer of marks or pipes is called in a map. */
  mapLayerName(layer: 'marks' | 'pipe'): string;
  /** Why a typed definition of a coordinate system cannot be used. */
  definitionProblemText(problem: DefinitionProblem): Said;
  /** Why a file is not brought in; what of it is left out; what it does not say and is asked. */
  incomingProblemText(problem: IncomingProblemFacts): Said;
  incomingNoteText(note: IncomingNote): string;
  incomingQuestionText(question: IncomingQuestion): string;
  /** Why what came in has no place in this site, and what is to be known of where it lies. */
  placingProblemText(problem: PlacingProblem): Said;
  incomingFindingText(finding: IncomingFinding, units: Units): Said;
  /** Why a bundle of a site with its pictures is not opened; what of it was left, or is missing. */
  bundleProblemText(failure: BundleFailure): SaidOfFile;
  bundleNoteText(note: BundleNote): string;
  fileProblemText(failure: OpenFailure): SaidOfFile;
  /** Why a link or a QR symbol cannot be opened or made, and, of a site in it that is not sound, each place that is wrong. */
  linkProblemText(problem: LinkProblem): SaidOfFile;
  /** Why an edit was not made, and the limit that it would have passed. */
  editProblemText(problem: EditProblem, units: Units): string;
  parseProblemText(problem: ParseFailure): string;
  /** What contradicts itself in an arc as a plat tells it. */
  arcProblemText(problem: ArcProblem, units: Units): string;
  /** Why measurements from two points lead to no place. */
  spotProblemText(problem: SpotProblem, units: Units): string;
  /** Why the length of a leg cannot be changed as asked, and what can. */
  legProblemText(problem: LegProblem): string;
  /** Why pasted readings, a row or a cell of them cannot be taken over, and what to do about it. */
  tableProblemText(problem: TableProblemFacts): string;
  cautionText(code: CautionCode): { readonly title: string; readonly text: string };
  /** What must be said where values of a model code or a guide stand. */
  modelValuesText(): string;
};
