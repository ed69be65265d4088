export type { AccuracyRule, SiteAccuracy } from './derive/accuracy';
export type { PairAgreement } from './derive/agreement';
export { type AsBuiltPoint, asBuiltPoints, findsBeside, findsOn } from './derive/asBuilt';
export { type AsBuiltTie, asBuiltTies } from './derive/asBuiltTies';
export type { Clearance } from './derive/clearances';
export type { SeenStretch, StretchEnd } from './derive/coverage';
export { type Derived, derive } from './derive/derive';
export type { DerivedFeature, FeatureClosure } from './derive/deriveFeatures';
export type { DerivedFrame } from './derive/deriveFrame';
export type { DerivedPath, Join } from './derive/derivePaths';
export { derivePlaces, type Places } from './derive/derivePlaces';
export { DRAWN_TURN_RAD, drawnTurn } from './derive/drawnTurn';
export { faceRadiusOf } from './derive/faceRadius';
export { farEnd } from './derive/farEnd';
export { type FindVerdict, findInHole, findsOutside } from './derive/findInHole';
export type { Finding, FindingCode, FindingOf, FindingValues, Severity, Target } from './derive/finding';
export { targetOfFind } from './derive/foundFindings';
export { type FoundPlace, latestFinds, type SoughtPlace } from './derive/foundPlaces';
export { type GivenTie, givenTies } from './derive/givenTies';
export type { Locate } from './derive/locates';
export type { LookedStretch } from './derive/lookedAt';
export { type MarkState, markState } from './derive/markState';
export type { Mark, MarkPlace } from './derive/marks';
export type { OffsetPaint } from './derive/markTies';
export type { PairExplanation } from './derive/pairExplanations';
export type { PairSuggestion } from './derive/pairSuggestions';
export { placeOfTapes } from './derive/placeOfTapes';
export { type DepthAt, type PathProfile, type ProfileAt, profileAt } from './derive/profileAt';
export { type ProfileCrossing, profileCrossings } from './derive/profileCrossings';
export { type GroundAt, type GroundLine, type GroundMark, groundAt } from './derive/profileGround';
export { type InvertAt, invertAt, type ProfileLine, type Sag, spanOf } from './derive/profileLine';
export type { KnownInvert, ProfileDrop, ProfilePoint } from './derive/profilePoints';
export {
  type DoubtfulSlopes,
  doubtfulSlopes,
  type ProfileSlope,
  type SlopeVerdict,
  slopeVerdict,
} from './derive/profileSlopes';
export { type LevelSource, type PipeSize, pipeSizeAt, type Sounding } from './derive/profileSoundings';
export { deriveProfiles } from './derive/profiles';
export { type MarkReach, type ReachContradiction, reachOfMark } from './derive/reach';
export type { ReachKnown } from './derive/reachKnowns';
export type { ReadingTrace } from './derive/readingAlong';
export type { ReferencePoint } from './derive/references';
export { offsetPoint, type ResolvedPoint, type ResolvedPoints, resolvePoints } from './derive/resolvePoints';
export type { RouteLeg, RunRoute } from './derive/runRoute';
export { proposedPaths, type SetOut, type SetOutPoint, setOutOf, setOutsOf } from './derive/setOut';
export { type SetOutBend, type SetOutPlace, setOutPlaces } from './derive/setOutPlaces';
export { type Side, sideOf } from './derive/side';
export { type RunCorrection, siteAsDrawn, standingFit } from './derive/standingFit';
export { stemDiameterOf } from './derive/stemDiameter';
export { stretchesBetween } from './derive/stretchesBetween';
export { tieChooser } from './derive/tieChooser';
export type { Tie, Ties } from './derive/ties';
export {
  type DerivedUnderlay,
  pixelToPlan,
  planToPixel,
  type UnderlayFitted,
  type UnderlayProblem,
  underlayTransform,
} from './derive/underlayTransform';
export type { GapEnd, UnseenGap } from './derive/unseen';
export { compareVisits, type StillThere, type VisitComparison } from './derive/visitComparison';
export type { VisitThing } from './derive/visitThings';
export {
  ANSWER_FORMAT,
  ANSWER_VERSION,
  type Answer,
  type AnswerFailure,
  answer as answerSchema,
  MOST_ANSWER_CHARACTERS,
  type OpenedAnswer,
  openAnswer,
  readAnswer,
  type Tick,
  writeAnswer,
} from './document/answer';
export {
  type AsFound,
  aboutKey,
  type FoundAbout,
  type FoundReport,
  type FoundState,
  type FoundWhere,
  foundStates,
  type GivenPaint,
} from './document/asFound';
export { dependsOn } from './document/dependsOn';
export {
  type Dig,
  type Digging,
  type OneCall,
  type Protection,
  type SiteNote,
  type Soil,
  soilIds,
} from './document/dig';
export type { Feature, FeatureOf, FieldsOf } from './document/feature';
export { feature as featureSchema, MOST_VERTICES } from './document/feature';
export type { FitEvidence, TakenFit } from './document/fit';
export type { ControlPoint, Frame, North } from './document/frame';
export { type IntegrityProblem, integrityProblems } from './document/integrity';
export { siteJsonSchema } from './document/jsonSchema';
export {
  type FileProblem,
  MOST_SITE_CHARACTERS,
  type Opened,
  type OpenFailure,
  openSite,
  openSiteValue,
  writeSite,
} from './document/openSite';
export {
  type KnownLength,
  type Path,
  type PathVertex,
  type PipeLevel,
  type PipeMaterial,
  path as pathSchema,
  pipeMaterials,
  type Stretch,
} from './document/path';
export {
  fewestVertices,
  isPath,
  type PointOwner,
  pointOwners,
  refKey,
  vertexOf,
} from './document/pointOwners';
export type { ReadingRef } from './document/readingRef';
export {
  type Clock,
  type CounterScale,
  factorOf,
  type GroundState,
  type Head,
  type Reading,
  type Run,
  reading as readingSchema,
  run as runSchema,
  type Zero,
} from './document/run';
export { sameValue } from './document/sameValue';
export { PLAN_LIMIT_M } from './document/scalars';
export {
  MOST_IN_SITE,
  SITE_FORMAT,
  SITE_VERSION,
  type Site,
  site as siteSchema,
  type TapeMeasure,
  type Units,
} from './document/site';
export type { RuleChange, SiteRules } from './document/siteRules';
export {
  followsPrevious,
  type LegSpot,
  type Ref,
  refsOfSpot,
  type Spot,
  type Tape,
  type Vertex,
} from './document/spot';
export type { Pixel, Underlay, UnderlayFit } from './document/underlay';
export type { ValueProblem } from './document/valueProblems';
export type { Pair, Visit } from './document/visit';
export { type AsFoundFacts, addAsFound, changeAsFound, removeAsFound } from './edits/asFoundEdits';
export { copyThings, isSelfContained, type LooseThings, looseThings, pasteThings } from './edits/copyThings';
export {
  addDig,
  addSiteNote,
  changeDig,
  changeGround,
  changeOneCall,
  type DigFacts,
  removeDig,
  removeSiteNote,
} from './edits/digEdits';
export type { Edit } from './edits/edit';
export { addFeature, nameFeature, setBalance, setClosing, setField } from './edits/featureEdits';
export { addControl, changeControl, removeControl, setNorth } from './edits/frameEdits';
export { freeName, takenNames } from './edits/freeName';
export { makeAsBuilt } from './edits/makeAsBuilt';
export { mergeAnswer } from './edits/mergeAnswer';
export { addPair, removePair, tellApart } from './edits/pairEdits';
export { withoutAbsent } from './edits/patch';
export {
  addPath,
  changePath,
  changePathVertex,
  type PathPointFacts,
  removeKnownLength,
  removeStretch,
  setKnownLength,
  setStretch,
} from './edits/pathEdits';
export { removeThing } from './edits/removeThing';
export { reversePath } from './edits/reversePath';
export { changeRule, chooseRuleSet, chooseTreeRule, restoreRule } from './edits/ruleEdits';
export {
  addReading,
  addReadings,
  addRun,
  changeReading,
  changeRun,
  freeRunLetter,
  moveReading,
  nextReadingNumber,
  type ReadingFacts,
  type RunFacts,
  removeReading,
  sortReadings,
} from './edits/runEdits';
export { type LegChange, type LegProblem, setLegLength } from './edits/setLegLength';
export { changeSite, newSite, type SiteFacts, setAside, setSigma } from './edits/siteEdits';
export { type EditProblem, type SoundEdit, soundEdit } from './edits/soundEdit';
export { splitLeg } from './edits/splitLeg';
export { dropFit, takeFit } from './edits/takeFit';
export { alignThings, rotateThings, setLocked } from './edits/thingEdits';
export { addUnderlay, changeUnderlay, removeUnderlay } from './edits/underlayEdits';
export {
  freeVertexId,
  insertVertex,
  letters,
  movePoint,
  moveThing,
  moveThings,
  removeVertex,
  setSpot,
} from './edits/vertexEdits';
export { addVisit, changeVisit, removeVisit } from './edits/visitEdits';
export { canWeigh, weighFind } from './edits/weighFind';
export { type FitOptions, fitRuns } from './fit/fitRuns';
export {
  isEvidence,
  type ObservationIs,
  type ObservationTag,
  observationName,
  type ZoneSource,
} from './fit/observationTag';
export type {
  BlunderGroup,
  FitObservation,
  FitStatus,
  FittedMark,
  FittedPath,
  FittedRun,
  RunsFit,
  SearchZone,
} from './fit/runsFit';
export { accuracySigma } from './frame/accuracySigma';
export { type EarthFit, earthToPlan, planToEarth } from './frame/earthFit';
export {
  type DefinitionProblem,
  type EarthPoint,
  loadProjection,
  type MapProjection,
  mapProjection,
  needsProjection,
  type ProjectionProblem,
} from './frame/projection';
export { planAzimuth, trueAzimuth } from './frame/trueAzimuth';
export {
  type ClearanceFace,
  type FeatureKind,
  type FeatureLayer,
  featureKindIds,
  featureKinds,
  type KindSpec,
  kindSpec,
  type Shape,
} from './kinds/featureKinds';
export type { FieldInput, FieldSpec } from './kinds/field';
export {
  type ObservationGroup,
  type ObservationKind,
  type ObservationSpec,
  observationKindIds,
  observationKinds,
} from './kinds/observationKinds';
export {
  type ActionWord,
  actionIds,
  type RunEnd,
  runEndIds,
  type SeverityWord,
  severityIds,
  type VisitPurpose,
  visitPurposeIds,
} from './kinds/readingWords';
export {
  drainBends,
  SAME_TURN_RAD,
  type StandardBend,
  standardBendOf,
  standardBends,
} from './kinds/standardBends';

export { leastFall, NOMINAL_SHARE } from './rules/leastFall';
export { profileRules, wallShares } from './rules/profileRules';
export { type Rule, ruleOf, ruleValue, treeRuleOf, waterOverOf } from './rules/ruleOf';
export {
  type RuleGroup,
  type RuleName,
  type RuleSetId,
  ruleGroups,
  ruleNames,
  ruleSetIds,
} from './rules/rules';
export { type Basis, type SettingRow, settings } from './rules/settings';
export { sigmaOf } from './rules/sigmaOf';
export { type SigmaName, sigmaNames, sigmas, WITHIN_95 } from './rules/sigmas';
export { boreDistances, type TreeRuleId, treeRuleIds } from './rules/treeRules';
export {
  type ClockRange,
  FOOT_M,
  formatAzimuth,
  formatBearing,
  formatClock,
  formatDeclination,
  formatDiameter,
  formatLatLon,
  formatLength,
  formatSlope,
  formatTurn,
  formatVideoTime,
  INCH_M,
  type LatLon,
  type LengthFormat,
  type LengthStyle,
  lengthInputText,
  type Parsed,
  type ParseFailure,
  type ParseProblem,
  parseAzimuth,
  parseBend,
  parseClockRange,
  parseDeclination,
  parseDiameter,
  parseLatLon,
  parseLength,
  parseNumber,
  parseSlope,
  parseTurn,
  parseVideoTime,
  US_SURVEY_FOOT_M,
} from './units/index';
