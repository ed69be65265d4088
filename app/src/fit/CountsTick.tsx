import { setAside } from '@footmark/site';
import { Tick } from '../controls/Tick';
import { edit, useSite } from '../session/siteSession';

type Props = {
  /** The observation's name in the fit. */
  readonly observation: string;
  /** What it is, for a reader and for the history. */
  readonly name: string;
};

/** Whether something counts in the fit, or is set aside to see. */
export function CountsTick({ observation, name }: Props) {
  const aside = useSite().setAside.includes(observation);
  return (
    <Tick
      isSelected={!aside}
      label={`${name} counts`}
      onChange={(counts) =>
        edit(counts ? `Count again: ${name}` : `Set aside: ${name}`, (s) =>
          setAside(s, { observation, aside: !counts }),
        )
      }
    >
      Counts
    </Tick>
  );
}
