import type { ReadingRef } from '@footmark/site';
import { counterText } from '@footmark/words';
import { Choice } from '../controls/Choice';
import { useSite } from '../session/siteSession';
import { words } from '../words';

type Props = {
  readonly label: string;
  readonly value: ReadingRef | undefined;
  readonly onChange: (reading: ReadingRef | undefined) => void;
};

/** A reading of one of the site's runs, chosen by the label that is painted for it. */
export function ReadingField({ label, value, onChange }: Props) {
  const site = useSite();
  const readings = site.runs.flatMap((run) =>
    run.readings.map((reading) => ({
      id: keyOf({ run: run.id, reading: reading.id }),
      name: `${run.letter}${reading.number}, ${words.observationName(reading.seen).toLowerCase()}, ${counterText(reading.counter, site.units)}`,
      ref: { run: run.id, reading: reading.id },
    })),
  );
  return (
    <Choice
      label={label}
      options={[{ id: '', name: 'Not given' }, ...readings]}
      value={value === undefined ? '' : keyOf(value)}
      onChange={(key) => onChange(readings.find((r) => r.id === key)?.ref)}
    />
  );
}

function keyOf({ run, reading }: ReadingRef): string {
  return `${run}/${reading}`;
}
