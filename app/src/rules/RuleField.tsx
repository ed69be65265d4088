import {
  formatSlope,
  lengthInputText,
  parseLength,
  parseNumber,
  parseSlope,
  type Rule,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { MeasureField } from '../controls/MeasureField';
import { useSite } from '../session/siteSession';

type Props = {
  readonly label: string;
  readonly rule: Rule;
  readonly onChange: (value: number | undefined) => void;
};

const DEGREE = Math.PI / 180;
/** Decimals in which a plain number or an angle is shown: more is rounding. */
const DECIMALS = 3;

/** The value of a rule in its own unit: a length, degrees, a slope, or a plain number. */
export function RuleField({ label, rule, onChange }: Props) {
  const { units } = useSite();
  const { unit } = rule.row;
  const scale = unit === 'rad' ? DEGREE : 1;
  const slopeStyle = units.length === 'm' ? 'percent' : 'in/ft';
  const print = (value: number) => {
    if (unit === 'm') return lengthInputText(value, units.length);
    if (unit === 'fall') return formatSlope(value, slopeStyle, { plain: true });
    return String(Number((value / scale).toFixed(DECIMALS)));
  };
  const parse = (text: string) => {
    if (unit === 'm') return parseLength(text, units.length);
    if (unit === 'fall') return parseSlope(text, { defaultStyle: slopeStyle });
    return parseNumber(text, unit === 'rad' ? { mark: '°', per: DEGREE } : {});
  };
  return (
    <MeasureField
      label={unit === 'rad' ? `${label}, degrees` : label}
      value={rule.changed?.value}
      placeholder={unit === 'm' ? lengthText(rule.row.value, units) : print(rule.row.value)}
      parse={parse}
      print={print}
      onChange={onChange}
    />
  );
}
