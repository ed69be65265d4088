import { Choice } from '../controls/Choice';
import type { PastedLine, SaidToMean } from './pastedTable';
import styles from './runs.module.css';
import { seenOptions } from './seenOptions';

type Props = {
  readonly lines: readonly PastedLine[];
  readonly means: SaidToMean;
  readonly onSay: (means: SaidToMean) => void;
};

/** More words than these are asked for one after another, the most frequent first. */
const AT_ONCE = 5;

/** Words of a table that are none of the things a reading can have seen: each is asked for once, whatever the rows. */
export function UnknownThings({ lines, means, onSay }: Props) {
  const counts = new Map<string, number>();
  for (const { unknown } of lines) if (unknown !== null) counts.set(unknown, (counts.get(unknown) ?? 0) + 1);
  const asked = [...counts].sort((a, b) => b[1] - a[1]);
  const open = asked.filter(([word]) => means[word] === undefined);
  const shown = [...asked.filter(([word]) => means[word] !== undefined), ...open.slice(0, AT_ONCE)];
  if (shown.length === 0) return null;
  return (
    <div className={styles.form}>
      {shown.map(([word, count]) => (
        <Choice
          key={word}
          label={`${word === '' ? 'Nothing seen is said' : `“${word}”`} in ${count === 1 ? 'one row' : `${count} rows`}: what is it?`}
          options={seenOptions}
          value={means[word] ?? null}
          placeholder="Left out until you choose"
          onChange={(kind) => onSay({ ...means, [word]: kind })}
        />
      ))}
      {open.length > AT_ONCE ? <p>{open.length - AT_ONCE} more words are asked for after these.</p> : null}
    </div>
  );
}
