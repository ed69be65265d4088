import type { TreeRuleId } from '@footmark/site';
import { volumeText } from '../amountText';
import { angleText } from '../measureText';
import { holeSizeText } from '../sureText';
import type { Words } from '../words';
import { sureText } from './sureText';

export const locatedText: Words['locatedText'] = (mark, off, units) =>
  off === null ? `${mark} localizada` : `${mark} localizada a ${sureText(off, units)}`;

export const digText: Words['digText'] = (hole, units) => `Hoyo ${holeSizeText(hole, units)}`;

export const unseenText: Words['unseenText'] = (length, units) => `? sin ver, ${sureText(length, units)}`;

export const planLineNames: Readonly<Record<Parameters<Words['planLineName']>[0], string>> = {
  fitted: 'ajustada',
  reach: 'alcance del cable',
};

export const excavationText: Words['excavationText'] = ({ depth, top }, said, units) => {
  if (depth === null) return 'Profundidad no conocida';
  const [least, most] = [sureText(depth.least, units), sureText(depth.most, units)];
  const deep = least === most ? `${most} de profundidad` : `de ${least} a ${most} de profundidad`;
  return top === null || said === 'brief' ? deep : `${deep}, ${sureText(top.width, units)} de ancho arriba`;
};

const treeRuleShortNames: Readonly<Record<TreeRuleId, string>> = {
  'bs-5837': 'BS 5837',
  'as-4970': 'AS 4970',
  'critical-root-radius': 'radio crítico de raíces',
  'tolerance-and-age': 'tolerancia y edad',
  'six-diameters': 'seis diámetros',
  'bore-distance': 'perforar, no zanjar',
};

export const rootZoneText: Words['rootZoneText'] = ({ is, rule, radius }, units) => {
  const name = {
    chosen: treeRuleShortNames[rule],
    'structural-root-zone': 'zona de raíces estructurales',
    stability: 'estabilidad',
  };
  return `${name[is]} ${sureText(radius, units)}`;
};

export const footingLineText: Words['footingLineText'] = (influence, reach, units) =>
  influence === null
    ? `Cortada en talud toca la zapata, a ${sureText(reach, units)}`
    : `Línea de ${angleText(Math.atan2(1, influence))} de la zapata, a ${sureText(reach, units)}`;

export const spoilText: Words['spoilText'] = (volume, units) =>
  `Tierra excavada ${volumeText(volume, units)}`;
