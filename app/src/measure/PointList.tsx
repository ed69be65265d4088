import { type Ref, refKey } from '@footmark/site';
import { useMemo } from 'react';
import { Choice } from '../controls/Choice';
import { useDerived, useSite } from '../session/siteSession';
import { pointChoices, refOfKey } from './pointChoices';

type Props = {
  readonly label: string;
  readonly value?: Ref | null;
  /** The point that is being measured: what hangs on it is not offered. */
  readonly self?: Ref | null;
  readonly placeholder?: string;
  readonly onChoose: (point: Ref) => void;
};

/** Any point of the site, by name. */
export function PointList({ label, value = null, self = null, placeholder, onChoose }: Props) {
  const site = useSite();
  const derived = useDerived();
  const options = useMemo(() => pointChoices(site, derived, self), [site, derived, self]);
  return (
    <Choice
      label={label}
      options={options}
      value={value === null ? null : refKey(value)}
      onChange={(key) => onChoose(refOfKey(key))}
      {...(placeholder === undefined ? {} : { placeholder })}
    />
  );
}
