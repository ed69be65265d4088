import {
  formatSlope,
  lengthInputText,
  parseDiameter,
  parseLength,
  parseSlope,
  type Units,
} from '@footmark/site';
import type { ComponentProps } from 'react';
import { useSite } from '../session/siteSession';
import { MeasureField } from './MeasureField';

type FieldProps = Omit<ComponentProps<typeof MeasureField>, 'parse' | 'print'>;

/** What a bare number means in a site's units, as a hint in a field: as likely a depth as a length. */
const LENGTH_EXAMPLE: Record<Units['length'], string> = {
  'ft-in': `6' 6 1/2"`,
  ft: '6.5',
  m: '1.98',
};

/** A length in the site's unit, or in any other that is written with it. */
export function LengthField({
  allowNegative = false,
  ...rest
}: FieldProps & { readonly allowNegative?: boolean }) {
  const { units } = useSite();
  return (
    <MeasureField
      placeholder={LENGTH_EXAMPLE[units.length]}
      {...rest}
      parse={(text) => parseLength(text, units.length, { allowNegative })}
      print={(metres) => lengthInputText(metres, units.length)}
    />
  );
}

/** A trunk's or a pipe's diameter, in inches or millimetres unless written otherwise. */
export function DiameterField(props: FieldProps) {
  const { units } = useSite();
  return (
    <MeasureField
      {...props}
      parse={(text) => parseDiameter(text, units.diameter)}
      print={(metres) => lengthInputText(metres, units.diameter)}
    />
  );
}

/** Fall over run: `1/4 in/ft`, `2 %`, `1:48`. */
export function SlopeField(props: FieldProps) {
  const { units } = useSite();
  const style = units.length === 'm' ? 'percent' : 'in/ft';
  return (
    <MeasureField
      {...props}
      parse={(text) => parseSlope(text, { defaultStyle: style })}
      print={(slope) => formatSlope(slope, style, { plain: true })}
    />
  );
}
