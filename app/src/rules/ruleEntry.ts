import {
  FOOT_M,
  formatSlope,
  lengthInputText,
  type Parsed,
  parseLength,
  parseNumber,
  parseSlope,
  type SettingRow,
  type Units,
} from '@footmark/site';

/** How a rule's value (SI) is shown in its field and read from it. */
export type RuleEntry = {
  readonly print: (value: number) => string;
  readonly parse: (text: string) => Parsed;
};

const DEGREE = Math.PI / 180;
/** Decimals in which a number that is no length and no slope is shown: more is rounding. */
const DECIMALS = 3;

/** A length, a speed or a slope as the site writes them, degrees, or a plain number. */
export function ruleEntry(unit: SettingRow['unit'], { length }: Pick<Units, 'length'>): RuleEntry {
  switch (unit) {
    case 'm':
      return {
        print: (metres) => lengthInputText(metres, length),
        parse: (text) => parseLength(text, length),
      };
    case 'fall': {
      const style = length === 'm' ? 'percent' : 'in/ft';
      return {
        print: (slope) => formatSlope(slope, style, { plain: true }),
        parse: (text) => parseSlope(text, { defaultStyle: style }),
      };
    }
    case 'm/s': {
      const [per, mark] = length === 'm' ? [1, 'm/s'] : [FOOT_M, 'ft/s'];
      return {
        print: (speed) => `${rounded(speed / per)} ${mark}`,
        parse: (text) => parseNumber(text, { mark, per }),
      };
    }
    case 'rad':
      return {
        print: (angle) => rounded(angle / DEGREE),
        parse: (text) => parseNumber(text, { mark: '°', per: DEGREE }),
      };
    case '1':
      return { print: rounded, parse: (text) => parseNumber(text) };
  }
}

function rounded(value: number): string {
  return String(Number(value.toFixed(DECIMALS)));
}
