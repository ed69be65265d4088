import type { Rule } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { MeasureField } from '../controls/MeasureField';
import { useSite } from '../session/siteSession';
import { ruleEntry } from './ruleEntry';

type Props = {
  readonly label: string;
  readonly rule: Rule;
  readonly onChange: (value: number | undefined) => void;
};

/** The value of a rule in its own unit. */
export function RuleField({ label, rule, onChange }: Props) {
  const { units } = useSite();
  const { unit, value } = rule.row;
  const { print, parse } = ruleEntry(unit, units);
  return (
    <MeasureField
      label={unit === 'rad' ? `${label}, degrees` : label}
      value={rule.changed?.value}
      placeholder={unit === 'm' ? lengthText(value, units) : print(value)}
      parse={parse}
      print={print}
      onChange={onChange}
    />
  );
}
