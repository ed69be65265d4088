import { ArrowLeft, CircleAlert, CircleCheck, Redo2, Undo2 } from 'lucide-react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { useSaveState } from '../session/autosave';
import { redo, undo, useDerived, useHistory, useSite } from '../session/siteSession';
import { toggleLeaf, useWorkbench } from '../session/workbench';
import { MoreMenu } from './MoreMenu';
import styles from './TitleStrip.module.css';

/** The strip along the top, ruled like a drawing's title block: which site, whether it is saved, undo, checks. */
export function TitleStrip() {
  const [, go] = useLocation();
  const site = useSite();
  const history = useHistory();
  return (
    <header className={styles.strip}>
      <Action look="icon" onPress={() => go('/')} aria-label="All sites">
        <ArrowLeft size={20} aria-hidden />
      </Action>
      <div className={styles.name}>
        <h1>{site.name || 'Site without a name'}</h1>
        <SaveLine />
      </div>
      <Action
        look="icon"
        aria-label={history.undo === null ? 'Nothing to undo' : `Undo: ${history.undo}`}
        isDisabled={history.undo === null}
        onPress={() => undo()}
      >
        <Undo2 size={20} aria-hidden />
      </Action>
      <Action
        look="icon"
        aria-label={history.redo === null ? 'Nothing to redo' : `Redo: ${history.redo}`}
        isDisabled={history.redo === null}
        onPress={() => redo()}
      >
        <Redo2 size={20} aria-hidden />
      </Action>
      <ChecksButton />
      <MoreMenu />
    </header>
  );
}

function ChecksButton() {
  const { findings } = useDerived();
  const open = useWorkbench((w) => w.leaf === 'checks');
  const urgent = findings.filter((f) => f.severity !== 'note').length;
  const label = findings.length === 0 ? 'Checks: nothing found' : `Checks: ${findings.length} found`;
  return (
    <Action aria-label={label} aria-expanded={open} onPress={() => toggleLeaf('checks')}>
      {urgent === 0 ? <CircleCheck size={20} aria-hidden /> : <CircleAlert size={20} aria-hidden />}
      <span className={styles.wideOnly}>Checks</span>{' '}
      {findings.length > 0 ? <span className={styles.count}>{findings.length}</span> : null}
    </Action>
  );
}

const SAVED = 'Saved on this device';

function SaveLine() {
  const site = useSite();
  const { waiting, failed } = useSaveState();
  if (failed.size > 0) {
    const others = [...failed]
      .filter((id) => id !== site.id)
      .map((id) => waiting.get(id)?.name || 'another site');
    const what = failed.has(site.id) ? 'Not saved on this device' : `${others.join(', ')} is not saved`;
    return <p className={styles.failed}>{what}</p>;
  }
  return (
    <p className={styles.saved} role="status" data-longest={SAVED}>
      <span>{waiting.size === 0 ? SAVED : 'Saving'}</span>
    </p>
  );
}
