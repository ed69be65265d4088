import { addSiteNote, removeSiteNote } from '@footmark/site';
import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Input, Label, TextField } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import { edit, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import styles from './dig.module.css';

/** What was said and seen on the site, each with its time. */
export function NotesFold() {
  const { digging } = useSite();
  const [text, setText] = useState('');
  const add = () => {
    const said = text.trim();
    if (said === '') return;
    const note = { id: newId('n'), at: new Date().toISOString(), text: said };
    if (edit('Write a note', (s) => addSiteNote(s, { note }))) setText('');
  };
  return (
    <Fold title="Notes" result={digging.notes.length === 0 ? 'none' : String(digging.notes.length)}>
      {digging.notes.length === 0 ? (
        <p className={cards.empty}>Who was told, what was agreed, what was seen: each note keeps its time.</p>
      ) : (
        <ul className={cards.rows}>
          {digging.notes.toReversed().map((note) => (
            <li key={note.id} className={styles.note}>
              <span>
                {note.text}
                <small>{new Date(note.at).toLocaleString()}</small>
              </span>
              <Action
                look="icon"
                aria-label="Delete this note"
                onPress={() => edit('Delete a note', (s) => removeSiteNote(s, { id: note.id }))}
              >
                <Trash2 size={20} aria-hidden />
              </Action>
            </li>
          ))}
        </ul>
      )}
      <form
        className={styles.add}
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <TextField className={controls.field ?? ''} value={text} onChange={setText} maxLength={5000}>
          <Label className={controls.label ?? ''}>New note</Label>
          <Input className={controls.input ?? ''} autoComplete="off" />
        </TextField>
        <Action type="submit">Add the note</Action>
      </form>
    </Fold>
  );
}
