import { lengthInputText, type PipeLevel, sigmaOf } from '@footmark/site';
import { useState } from 'react';
import { Choice } from '../controls/Choice';
import { LengthField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import styles from './cards.module.css';

type Measured = PipeLevel['is'];

const NAMES: Record<Measured, { readonly choice: string; readonly field: string; readonly hint: string }> = {
  invert: { choice: 'Invert, as a level', field: 'Invert level', hint: 'Above the datum of the site.' },
  'depth-to-invert': {
    choice: 'Depth to the invert',
    field: 'Depth to the invert',
    hint: 'Below the ground above it.',
  },
  'depth-to-top': {
    choice: 'Depth to the top of the pipe',
    field: 'Depth to the top',
    hint: 'Below the ground above it.',
  },
};

type Props = {
  readonly level: PipeLevel | undefined;
  readonly hasDrop: boolean;
  readonly onChange: (level: PipeLevel | undefined) => void;
};

/** How deep the pipe lies at a point, as it was measured, and how sure that is. */
export function LevelFields({ level, hasDrop, onChange }: Props) {
  const site = useSite();
  const [asked, setAsked] = useState<Measured | null>(null);
  const is = asked ?? level?.is ?? null;
  const isSame = level !== undefined && level.is === is;
  const value = !isSame ? undefined : level.is === 'invert' ? level.level : level.depth;
  const set = (measured: Measured, amount: number | undefined, sigma: number | undefined) => {
    setAsked(amount === undefined ? measured : null);
    const known = sigma === undefined ? {} : { sigma };
    if (amount === undefined) onChange(undefined);
    else if (measured === 'invert') onChange({ is: measured, level: amount, ...known });
    else onChange({ is: measured, depth: amount, ...known });
  };
  return (
    <>
      <Choice
        label="How deep it lies here"
        options={[
          { id: '', name: 'Not measured' },
          ...(Object.keys(NAMES) as Measured[]).map((id) => ({ id, name: NAMES[id].choice })), // keys of the table above
        ]}
        value={is ?? ''}
        onChange={(id) => {
          setAsked(id === '' ? null : id);
          if (id === '' && level !== undefined) onChange(undefined);
        }}
      />
      {is === null ? null : (
        <div className={styles.pair}>
          <LengthField
            key={is}
            label={NAMES[is].field}
            value={value}
            allowNegative={is === 'invert'}
            hint={hasDrop ? `${NAMES[is].hint} Below the drop.` : NAMES[is].hint}
            onChange={(amount) => set(is, amount, isSame ? level.sigma : undefined)}
          />
          {isSame ? (
            <LengthField
              label="Give or take"
              value={level.sigma}
              placeholder={lengthInputText(sigmaOf(site, 'tapedLevel'), site.units.length)}
              hint="1 in 3 lies outside of it."
              onChange={(sigma) => set(is, value, sigma)}
            />
          ) : null}
        </div>
      )}
    </>
  );
}
