import { parseNumber } from '@footmark/site';
import { MeasureField } from '../controls/MeasureField';
import { LengthField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { words } from '../words';

type Props = {
  readonly label: string;
  readonly unit: 'm' | 'rad' | '1';
  readonly value: number | undefined;
  /** The value that holds while none is given. */
  readonly usual: number;
  readonly hint: string;
  readonly onChange: (value: number | undefined) => void;
};

/** A standard deviation: a length, degrees, or a share in hundredths. */
export function SigmaField({ unit, usual, ...rest }: Props) {
  const { units } = useSite();
  switch (unit) {
    case 'm':
      return <LengthField {...rest} placeholder={words.sureText(usual, units)} />;
    case 'rad':
      return <NumberField {...rest} usual={usual} per={Math.PI / 180} mark="°" />;
    case '1':
      return <NumberField {...rest} usual={usual} per={1 / 100} mark=" %" />;
  }
}

type NumberProps = Omit<Props, 'unit'> & {
  /** What one of the printed unit is in SI. */
  readonly per: number;
  readonly mark: string;
};

function NumberField({ usual, per, mark, ...rest }: NumberProps) {
  const print = (value: number) => `${Number((value / per).toPrecision(3))}${mark}`;
  return (
    <MeasureField
      {...rest}
      placeholder={print(usual)}
      print={print}
      parse={(text) => parseNumber(text, { mark: mark.trim(), per, aboveZero: true })}
    />
  );
}
