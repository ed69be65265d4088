import { type Ref, refKey } from '@footmark/site';
import { useMemo } from 'react';
import { Choice } from '../controls/Choice';
import { pointChoices, refOfKey } from '../measure/pointChoices';
import { useDerived, useSite } from '../session/siteSession';

type Props = { readonly label: string; readonly value?: Ref; readonly onChoose: (point: Ref) => void };

/** Any point of the site, by name. */
export function PointList({ label, value, onChoose }: Props) {
  const site = useSite();
  const derived = useDerived();
  const options = useMemo(() => pointChoices(site, derived, null), [site, derived]);
  if (options.length === 0) return null;
  return (
    <Choice
      label={label}
      options={options}
      value={value === undefined ? null : refKey(value)}
      onChange={(key) => onChoose(refOfKey(key))}
    />
  );
}
