import {
  actionIds,
  featureKindIds,
  kindSpec,
  observationKindIds,
  pipeMaterials,
  ruleGroups,
  ruleNames,
  ruleSetIds,
  runEndIds,
  severityIds,
  sigmaNames,
  soilIds,
  treeRuleIds,
  visitPurposeIds,
} from '@footmark/site';
import type { Words } from '../words';

/** What a language says, by the function that says it, in the same order in every language. */
export type SaidBy = (words: Words) => readonly (string | null)[];

const fields = featureKindIds.flatMap((kind) =>
  Object.entries(kindSpec(kind).fields).map(([name, field]) => ({ kind, name, field })),
);
const choices = [
  ...new Set(fields.flatMap(({ field }) => (field.input.as === 'choice' ? field.input.choices : []))),
];

const groups = Object.keys(ruleGroups) as (keyof typeof ruleGroups)[]; // keys of a const table

/** All names of all tables. */
export const everyName = {
  featureKindName: (w) => featureKindIds.map((kind) => w.featureKindName(kind)),
  fieldName: (w) => fields.map(({ kind, name }) => w.fieldName(kind, name)),
  choiceName: (w) => choices.map((choice) => w.choiceName(choice)),
  shapeName: (w) => (['point', 'line', 'area'] as const).map((shape) => w.shapeName(shape)),
  layerName: (w) => featureKindIds.map((kind) => w.layerName(kindSpec(kind).layer)),
  observationName: (w) => observationKindIds.map((kind) => w.observationName(kind)),
  materialName: (w) => pipeMaterials.map((material) => w.materialName(material)),
  pathStateName: (w) =>
    (['existing', 'proposed', 'as-built'] as const).map((state) => w.pathStateName(state)),
  directionName: (w) => (['with-flow', 'against-flow'] as const).map((way) => w.directionName(way)),
  zeroName: (w) => (['in-pipe', 'rim', 'stack-base', 'point'] as const).map((at) => w.zeroName(at)),
  spotName: (w) =>
    (
      [
        'finger',
        'coordinates',
        'tapes',
        'offset',
        'bearing',
        'between',
        'at',
        'course',
        'turn',
        'arc',
      ] as const
    ).map((by) => w.spotName(by)),
  severityName: (w) => severityIds.map((severity) => w.severityName(severity)),
  actionName: (w) => actionIds.map((action) => w.actionName(action)),
  runEndName: (w) => runEndIds.map((end) => w.runEndName(end)),
  visitPurposeName: (w) => visitPurposeIds.map((purpose) => w.visitPurposeName(purpose)),
  headPartName: (w) => (['lens', 'tail'] as const).map((part) => w.headPartName(part)),
  slopeVerdictName: (w) =>
    (['enough', 'too-flat', 'cannot-tell', 'against-flow'] as const).map((v) => w.slopeVerdictName(v)),
  sigmaName: (w) => sigmaNames.map((name) => w.sigmaName(name)),
  findingSeverityName: (w) =>
    (['error', 'warning', 'note'] as const).map((severity) => w.findingSeverityName(severity)),
  yesNo: (w) => [true, false].map((value) => w.yesNo(value)),
  ruleName: (w) => ruleNames.map((rule) => w.ruleName(rule)),
  ruleGroupName: (w) => groups.map((group) => w.ruleGroupName(group)),
  ruleSetName: (w) => ruleSetIds.map((set) => w.ruleSetName(set)),
  treeRuleName: (w) => treeRuleIds.map((rule) => w.treeRuleName(rule)),
  soilName: (w) => soilIds.map((soil) => w.soilName(soil)),
  protectionName: (w) => (['slope', 'shield'] as const).map((p) => w.protectionName(p)),
  whoseName: (w) =>
    (['private', 'shared', 'neighbour', 'public', 'outside', 'unknown'] as const).map((whose) =>
      w.whoseName(whose),
    ),
  holdingRootsName: (w) =>
    (['structural-root-zone', 'stability'] as const).map((is) => w.holdingRootsName(is)),
  digSeverityName: (w) =>
    (['must', 'should', 'note'] as const).map((severity) => w.digSeverityName(severity)),
  zoneSourceName: (w) =>
    (['counter', 'zero', 'scale', 'riser', 'path', 'locate', 'pair', 'known'] as const).map((s) =>
      w.zoneSourceName(s),
    ),
  markStateName: (w) =>
    (['computed', 'located', 'painted', 'flagged', 'dug', 'found'] as const).map((state) =>
      w.markStateName(state),
    ),
  planLineName: (w) => (['fitted', 'reach'] as const).map((line) => w.planLineName(line)),
  wayName: (w) => (['new', 'bored', 'repair', 'in-place', 'drawn'] as const).map((is) => w.wayName(is)),
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
