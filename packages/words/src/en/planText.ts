import { holeSizeText, sureText } from '../sureText';
import type { Words } from '../words';

export const locatedText: Words['locatedText'] = (mark, off, units) =>
  off === null ? `${mark} located` : `${mark} located, ${sureText(off, units)} off`;

export const digText: Words['digText'] = (hole, units) => `Hole ${holeSizeText(hole, units)}`;

export const unseenText: Words['unseenText'] = (length, units) => `? not seen, ${sureText(length, units)}`;

export const planLineNames: Readonly<Record<Parameters<Words['planLineName']>[0], string>> = {
  fitted: 'fitted',
  reach: 'reach of the cable',
};
