import { dischargeText, velocityText, volumeText } from '../amountText';
import { atStart, named } from '../named';
import type { Words } from '../words';
import { accuracyText, apartText, explanationText, pairProblemTexts } from './agreementText';
import { basisText } from './basisText';
import { bundleNoteText, bundleProblemText } from './bundleText';
import { cautions, modelValuesText } from './cautions';
import { clockText } from './clockText';
import { crew } from './crew';
import { dimensionText, obstacleText } from './digClearanceText';
import { digFindingSubject, digFindingText, digFindingTitle } from './digFindingText';
import { landCrossingText, landName, landText, whoseAtText, whoseNames } from './digLandText';
import { acrossText, areaText, shareText } from './digMeasure';
import { oneCallText } from './digOneCallText';
import { boreText, treeTakenText } from './digTreeText';
import { digSeverityNames, holdingNames } from './digZone';
import {
  actionNames,
  directionNames,
  findingSeverityNames,
  headPartNames,
  materialNames,
  observationNames,
  pathStateNames,
  runEndNames,
  severityNames,
  spotNames,
  visitPurposeNames,
  zeroNames,
} from './drainNames';
import { editProblemText } from './editProblemText';
import { blunderText, evidenceInText, offText } from './evidenceText';
import { choiceNames, fieldNames, fieldNamesByKind } from './fieldNames';
import { fileProblemText } from './fileProblemText';
import { findingText } from './findingText';
import { fitText, misfitText, noFitText, oldFitText, suggestedText, surpriseText } from './fitText';
import {
  definitionProblemText,
  gridFactorRows,
  gridNoteText,
  gridSystemText,
  gridUnitText,
} from './gridText';
import { belowGroundText, dropText } from './heightText';
import {
  incomingFindingText,
  incomingNoteText,
  incomingProblemText,
  incomingQuestionText,
  placingProblemText,
} from './incomingText';
import { kinds, layerNames, shapeNames } from './kindNames';
import { legProblemTexts } from './legProblemText';
import { levelSourceName, profileHeightsText, slopeVerdictNames } from './levelNames';
import { linkProblemText } from './linkProblemText';
import { foundText, windText } from './locateText';
import { arcProblemText, spotProblemText } from './measureProblemText';
import { blockedText, relaxationText, routeFaultText, routeProblemText, sidesText } from './noRouteText';
import { fileFrameText, fileUnitText, mapLayerNames } from './outgoingText';
import { parseProblemText } from './parseProblemText';
import {
  digText,
  excavationText,
  footingLineText,
  locatedText,
  planLineNames,
  rootZoneText,
  spoilText,
  unseenText,
} from './planText';
import { priceItemName, priceText } from './priceNames';
import { reachTexts } from './reachText';
import { ruleChangeText } from './ruleChangeText';
import {
  protectionNames,
  ruleGroupNames,
  ruleNames,
  ruleSetNames,
  soilNames,
  treeRuleNames,
} from './ruleNames';
import { setOutBendTexts, setOutName } from './setOutText';
import { sheetWords } from './sheetWords';
import { sigmaNames } from './sigmaNames';
import { giveOrTakeText, sureText } from './sureText';
import { tableProblemText } from './tableProblemText';
import { clearedTitle, referenceTitle, targetTitle } from './thingName';
import { sideText, tieText } from './tieText';
import { traceSteps } from './traceSteps';
import { comparedTexts, dateText, faredText, stoppedText, visitName } from './visitText';
import { mindedName, wayNames, wayRows, wayText } from './wayText';
import { markStateNames, zoneSourceNames } from './zoneNames';

/** Plain trade Spanish as spoken by crews in the United States. */
export const es: Words = {
  language: 'es',
  crew,
  sheet: sheetWords,
  featureKindName: (kind) => kinds[kind].name,
  fieldName: (kind, field) => {
    const special: Readonly<Record<string, string>> = fieldNamesByKind[kind] ?? {};
    return named(Object.hasOwn(special, field) ? special : fieldNames, field);
  },
  choiceName: (value) => named(choiceNames, value),
  shapeName: (shape) => shapeNames[shape],
  layerName: (layer) => layerNames[layer],
  observationName: (kind) => observationNames[kind],
  materialName: (material) => materialNames[material],
  pathStateName: (state) => pathStateNames[state],
  directionName: (direction) => directionNames[direction],
  zeroName: (at) => zeroNames[at],
  spotName: (by) => spotNames[by],
  clockText,
  severityName: (severity) => severityNames[severity],
  actionName: (action) => actionNames[action],
  runEndName: (end) => runEndNames[end],
  visitPurposeName: (purpose) => visitPurposeNames[purpose],
  visitName,
  comparedText: (fate) => comparedTexts[fate],
  faredText,
  stoppedText,
  dateText,
  headPartName: (part) => headPartNames[part],
  slopeVerdictName: (verdict) => slopeVerdictNames[verdict],
  levelSourceName,
  profileHeightsText,
  sigmaName: (name) => sigmaNames[name],
  findingSeverityName: (severity) => findingSeverityNames[severity],
  ruleName: (rule) => ruleNames[rule],
  ruleGroupName: (group) => ruleGroupNames[group],
  ruleSetName: (set) => ruleSetNames[set],
  treeRuleName: (rule) => treeRuleNames[rule],
  soilName: (soil) => soilNames[soil],
  protectionName: (protection) => protectionNames[protection],
  whoseName: (whose) => whoseNames[whose],
  sureText,
  giveOrTakeText,
  yesNo: (value) => (value ? 'sí' : 'no'),
  targetName: targetTitle,
  referenceName: referenceTitle,
  clearanceName: clearedTitle,
  tieText,
  locatedText,
  digText,
  excavationText,
  footingLineText,
  spoilText,
  rootZoneText,
  unseenText,
  planLineName: (line) => planLineNames[line],
  sideText,
  setOutName,
  setOutBendTexts,
  traceSteps,
  fitText,
  noFitText,
  oldFitText,
  suggestedText,
  misfitText,
  surpriseText,
  evidenceName: (tag, site) => atStart(evidenceInText(tag, site)),
  offText,
  blunderText,
  pairProblemText: (problem) => pairProblemTexts[problem],
  apartText,
  explanationText,
  accuracyText,
  foundText,
  reachTexts,
  windText,
  basisText,
  zoneSourceName: (source) => zoneSourceNames[source],
  markStateName: (state) => markStateNames[state],
  findingText,
  digFindingText,
  digFindingTitle,
  digFindingSubject,
  oneCallText,
  landText,
  landName,
  landCrossingText,
  whoseAtText,
  ruleChangeText,
  treeTakenText,
  boreText,
  holdingRootsName: (is) => holdingNames[is],
  digSeverityName: (severity) => digSeverityNames[severity],
  obstacleText,
  dimensionText,
  areaText,
  velocityText,
  dropText,
  belowGroundText,
  dischargeText,
  volumeText,
  shareText,
  acrossText,
  wayName: (is) => wayNames[is],
  wayText,
  wayRows,
  priceItemName,
  priceText,
  blockedText,
  relaxationText,
  routeProblemText,
  sidesText,
  routeFaultText,
  mindedName,
  gridSystemText,
  gridUnitText,
  gridFactorRows,
  gridNoteText,
  fileFrameText,
  fileUnitText,
  mapLayerName: (layer) => mapLayerNames[layer],
  definitionProblemText,
  incomingProblemText,
  incomingNoteText,
  incomingQuestionText,
  placingProblemText,
  incomingFindingText,
  bundleProblemText,
  bundleNoteText,
  fileProblemText,
  linkProblemText,
  editProblemText,
  parseProblemText,
  arcProblemText,
  spotProblemText,
  legProblemText: (problem) => legProblemTexts[problem],
  tableProblemText,
  cautionText: (code) => cautions[code],
  modelValuesText: () => modelValuesText,
};
