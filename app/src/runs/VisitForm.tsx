import { changeVisit, removeVisit, type Visit, visitPurposeIds } from '@footmark/site';
import { Trash2 } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { DateField } from '../controls/DateField';
import { TextLine } from '../controls/TextLine';
import { currentSite, edit } from '../session/siteSession';
import { notifyOfEdit } from '../session/workbench';
import { words } from '../words';
import styles from './runs.module.css';

type Props = { readonly visit: Visit; readonly onClose: () => void };

/** When a visit was, what for, and what is to be said of it. */
export function VisitForm({ visit, onClose }: Props) {
  const change = (facts: Parameters<typeof changeVisit>[1]['facts']) =>
    edit('Change the visit', (s) => changeVisit(s, { id: visit.id, facts }));
  return (
    <div className={styles.form}>
      <div className={cards.pair}>
        <DateField label="Day" value={visit.date} onChange={(date) => change({ date })} />
        <Choice
          label="What for"
          options={visitPurposeIds.map((id) => ({ id, name: words.visitPurposeName(id) }))}
          value={visit.purpose}
          onChange={(purpose) => change({ purpose })}
        />
      </div>
      <TextLine label="Note" value={visit.note} maxLength={5000} onCommit={(note) => change({ note })} />
      <div className={cards.actions}>
        <Action onPress={onClose}>Done</Action>
        <Action look="quiet" onPress={() => remove(visit)}>
          <Trash2 size={20} aria-hidden /> Remove the visit
        </Action>
      </div>
    </div>
  );
}

function remove(visit: Visit): void {
  const runs = currentSite().runs.filter((r) => r.visit === visit.id);
  const letters = runs.map((r) => r.letter).join(', ');
  if (!edit('Remove the visit', (s) => removeVisit(s, { id: visit.id }))) return;
  notifyOfEdit(
    runs.length === 0
      ? 'The visit is removed.'
      : `The visit is removed. ${runs.length === 1 ? `Run ${letters} stays` : `Runs ${letters} stay`}, without a visit.`,
  );
}
