import { HardHat, Trash2 } from 'lucide-react';
import { memo, useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import { momentText } from '../cards/momentText';
import { useMoreInSight } from '../cards/useMoreInSight';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import type { SiteEntry } from '../storage/records';
import { TeamMark } from '../team/TeamMark';
import styles from './HomeScreen.module.css';

/** A list that is longer than this has a field to look for a site. */
const SEARCH_FROM = 12;

/** More rows than a screen holds, and few enough to be there at once. */
const ROWS_AT_A_TIME = 30;

type RowActions = {
  readonly onOpen: (id: string) => void;
  readonly onCrew: (id: string) => void;
  readonly onDelete: (id: string) => void;
  readonly onShared: () => void;
};

/** The sites on this device, last saved first; long lists come as they are scrolled, and can be searched. */
export function SiteList({ entries, ...actions }: RowActions & { readonly entries: readonly SiteEntry[] }) {
  const [wanted, setWanted] = useState('');
  const words = wanted.toLowerCase().split(/\s+/);
  const found = entries.filter(({ name, address }) => {
    const text = `${name} ${address}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const { shown, end } = useMoreInSight<HTMLLIElement>(found.length, ROWS_AT_A_TIME);
  return (
    <>
      {entries.length < SEARCH_FROM ? null : (
        <SearchField className={controls.field ?? ''} value={wanted} onChange={setWanted}>
          <Label className={controls.label ?? ''}>Look for a site by name or address</Label>
          <Input className={controls.input ?? ''} />
        </SearchField>
      )}
      {found.length === 0 ? <p className={styles.empty}>No site has that in its name or address.</p> : null}
      <ul>
        {found.slice(0, shown).map((entry) => (
          <SiteRow key={entry.id} entry={entry} {...actions} />
        ))}
        {shown < found.length ? <li ref={end} aria-hidden className={styles.further} /> : null}
      </ul>
    </>
  );
}

const SiteRow = memo(function Row({
  entry,
  onOpen,
  onCrew,
  onDelete,
  onShared,
}: RowActions & { readonly entry: SiteEntry }) {
  return (
    <li className={styles.site}>
      <Button className={styles.open ?? ''} onPress={() => onOpen(entry.id)}>
        <strong>{entry.name || 'Site without a name'}</strong>
        <span>{entry.address}</span>
        <span>
          {count(entry.counts.features, 'thing')} in the yard, {count(entry.counts.runs, 'run')},{' '}
          {count(entry.counts.readings, 'reading')}. Saved {momentText(entry.savedAt)}.
        </span>
      </Button>
      <TeamMark entry={entry} onShared={onShared} />
      <Action
        look="icon"
        aria-label={`Crew view of ${entry.name || 'the site without a name'}`}
        onPress={() => onCrew(entry.id)}
      >
        <HardHat size={20} aria-hidden />
      </Action>
      <Action look="icon" aria-label={`Delete ${entry.name}`} onPress={() => onDelete(entry.id)}>
        <Trash2 size={20} aria-hidden />
      </Action>
    </li>
  );
});

function count(n: number, one: string): string {
  return `${n} ${one}${n === 1 ? '' : 's'}`;
}
