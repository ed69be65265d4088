import type { TreeRuleId } from '@footmark/site';
import { volumeText } from '../amountText';
import { angleText } from '../measureText';
import { holeSizeText } from '../sureText';
import type { Words } from '../words';
import { sureText } from './sureText';

export const locatedText: Words['locatedText'] = (mark, off, units) =>
  off === null ? `${mark} located` : `${mark} located, ${sureText(off, units)} off`;

export const digText: Words['digText'] = (hole, units) => `Hole ${holeSizeText(hole, units)}`;

export const unseenText: Words['unseenText'] = (length, units) => `? not seen, ${sureText(length, units)}`;

export const planLineNames: Readonly<Record<Parameters<Words['planLineName']>[0], string>> = {
  fitted: 'fitted',
  reach: 'reach of the cable',
};

export const excavationText: Words['excavationText'] = ({ depth, top }, said, units) => {
  if (depth === null) return 'Depth not known';
  const [least, most] = [sureText(depth.least, units), sureText(depth.most, units)];
  const deep = least === most ? `${most} deep` : `${least} to ${most} deep`;
  return top === null || said === 'brief' ? deep : `${deep}, top ${sureText(top.width, units)} wide`;
};

const treeRuleShortNames: Readonly<Record<TreeRuleId, string>> = {
  'bs-5837': 'BS 5837',
  'as-4970': 'AS 4970',
  'critical-root-radius': 'critical root radius',
  'tolerance-and-age': 'tolerance and age',
  'six-diameters': 'six diameters',
  'bore-distance': 'bore, not trench',
};

export const rootZoneText: Words['rootZoneText'] = ({ is, rule, radius }, units) => {
  const name = {
    chosen: treeRuleShortNames[rule],
    'structural-root-zone': 'structural root zone',
    stability: 'stability',
  };
  return `${name[is]} ${sureText(radius, units)}`;
};

export const footingLineText: Words['footingLineText'] = (influence, reach, units) =>
  influence === null
    ? `Cut back it meets the footing, ${sureText(reach, units)} off`
    : `${angleText(Math.atan2(1, influence))} line of the footing, ${sureText(reach, units)} off`;

export const spoilText: Words['spoilText'] = (volume, units) => `Spoil ${volumeText(volume, units)}`;
