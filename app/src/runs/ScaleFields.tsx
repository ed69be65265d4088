import { type CounterScale, factorOf, parseNumber, type Run } from '@footmark/site';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { CounterField } from './CounterField';
import type { ChangeRun } from './changeRunFacts';
import { counterUnit } from './counterUnit';
import styles from './runs.module.css';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** A factor this far from 1 is rather a slip than a counter. */
const DOUBTED_SHARE = 0.1;

/** Decimals of a factor: a millionth is a millimetre in a kilometre. */
const FACTOR_DECIMALS = 6;

/** How the counter's length goes over into cable: a factor that is typed, or a known length that was counted. */
export function ScaleFields({ run, change }: Props) {
  const { scale } = run;
  // a calibration is one when both of its lengths are typed
  const [begun, setBegun] = useState<Partial<Record<'counted' | 'actual', number>> | null>(null);
  const calibration = begun ?? (scale.by === 'calibration' ? scale : null);
  const setScale = (next: CounterScale) => change('Change the counter scale', { scale: next });
  const setLength = (part: { counted?: number } | { actual?: number }) => {
    const next = { ...calibration, ...part };
    const { counted, actual } = next;
    if (counted && actual && setScale({ by: 'calibration', counted, actual })) setBegun(null);
    else setBegun({ ...(counted && { counted }), ...(actual && { actual }) });
  };
  return (
    <>
      <Segments
        label="Counter scale from"
        options={[
          { id: 'said', name: 'A typed factor' },
          { id: 'calibration', name: 'A known length' },
        ]}
        value={calibration === null ? 'said' : 'calibration'}
        onChange={(by) => {
          if (by === 'calibration') setBegun({});
          else {
            setBegun(null);
            if (scale.by !== 'said')
              setScale({ by, factor: Number(factorOf(scale).toFixed(FACTOR_DECIMALS)) });
          }
        }}
      />
      {calibration === null ? (
        <MeasureField
          label="Counter scale"
          value={factorOf(scale)}
          required
          parse={(text) => parseNumber(text, { aboveZero: true })}
          print={String}
          hint="True length for each counted length; 1 unless checked."
          onChange={(factor) => factor !== undefined && setScale({ by: 'said', factor })}
        />
      ) : (
        <>
          <div className={cards.pair}>
            <CounterField
              label="The counter ran"
              value={calibration.counted}
              required
              onChange={(counted) => counted !== undefined && setLength({ counted })}
            />
            <LengthField
              label="Over a taped length of"
              value={calibration.actual}
              required
              onChange={(actual) => actual !== undefined && setLength({ actual })}
            />
          </div>
          {calibration.counted && calibration.actual ? (
            <Factor factor={calibration.actual / calibration.counted} />
          ) : (
            <p className={cards.hintText}>
              Pull the cable along a tape and type both: what the counter ran, and what the tape says.
            </p>
          )}
        </>
      )}
    </>
  );
}

function Factor({ factor }: { readonly factor: number }) {
  const unit = counterUnit(useSite().units);
  const doubted = Math.abs(factor - 1) > DOUBTED_SHARE;
  return (
    <p className={styles.result} data-doubted={doubted}>
      One counted {unit === 'm' ? 'metre' : 'foot'} is{' '}
      <b>
        {factor.toFixed(4)} {unit}
      </b>{' '}
      of cable.
      {doubted ? ' That is far from 1: check both lengths and their units.' : ''}
    </p>
  );
}
