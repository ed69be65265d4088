import { ArrowLeft, CircleAlert, CircleCheck, Redo2, Undo2 } from 'lucide-react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { useSaveState } from '../session/autosave';
import { Follows } from '../session/Follows';
import { redo, undo, useHistory, useOfDerived, useOfSite } from '../session/siteSession';
import { toggleLeaf, useWorkbench } from '../session/workbench';
import { MoreMenu } from './MoreMenu';
import styles from './TitleStrip.module.css';

/** The strip along the top, ruled like a drawing's title block: which site, whether it is saved, undo, checks. */
export function TitleStrip() {
  const [, go] = useLocation();
  const name = useOfSite((site) => site.name);
  const history = useHistory();
  return (
    <header className={styles.strip}>
      <Action look="icon" onPress={() => go('/')} aria-label="All sites">
        <ArrowLeft size={20} aria-hidden />
      </Action>
      <div className={styles.name}>
        <h1>{name || 'Site without a name'}</h1>
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
      <Follows>
        <ChecksButton />
      </Follows>
      <MoreMenu />
    </header>
  );
}

function ChecksButton() {
  const found = useOfDerived(({ findings }) => findings.length);
  const urgent = useOfDerived(({ findings }) => findings.filter((f) => f.severity !== 'note').length);
  const open = useWorkbench((w) => w.leaf === 'checks');
  const label = found === 0 ? 'Checks: nothing found' : `Checks: ${found} found`;
  return (
    <Action aria-label={label} aria-expanded={open} onPress={() => toggleLeaf('checks')}>
      {urgent === 0 ? <CircleCheck size={20} aria-hidden /> : <CircleAlert size={20} aria-hidden />}
      <span className={styles.wideOnly}>Checks</span>{' '}
      {found > 0 ? <span className={styles.count}>{found}</span> : null}
    </Action>
  );
}

const SAVED = 'Saved on this device';

function SaveLine() {
  const own = useOfSite((site) => site.id);
  const { waiting, failed } = useSaveState();
  if (failed.size > 0) {
    const others = [...failed]
      .filter((id) => id !== own)
      .map((id) => waiting.get(id)?.name || 'another site');
    const what = failed.has(own) ? 'Not saved on this device' : `${others.join(', ')} is not saved`;
    return <p className={styles.failed}>{what}</p>;
  }
  return (
    <p className={styles.saved} role="status" data-longest={SAVED}>
      <span>{waiting.size === 0 ? SAVED : 'Saving'}</span>
    </p>
  );
}
