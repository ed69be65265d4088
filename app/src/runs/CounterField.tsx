import { lengthInputText, parseLength } from '@footmark/site';
import type { ComponentProps } from 'react';
import { MeasureField } from '../controls/MeasureField';
import { useSite } from '../session/siteSession';
import { counterUnit } from './counterUnit';

type Props = Omit<ComponentProps<typeof MeasureField>, 'parse' | 'print'>;

/** What a counter shows (m of its own count), in the unit that counters of this site have. */
export function CounterField(props: Props) {
  const unit = counterUnit(useSite().units);
  return (
    <MeasureField
      {...props}
      parse={(text) => parseLength(text, unit)}
      print={(metres) => lengthInputText(metres, unit)}
    />
  );
}
