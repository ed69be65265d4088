import { Action } from '../controls/Action';
import { saveSiteFile } from '../handOff/saveSiteFile';
import { type SaveProblem, saveAgain, useSaveState } from '../session/autosave';
import styles from './UnsavedBar.module.css';

const WHY: Record<SaveProblem, string> = {
  full: 'this device, or the browser’s share of it, is full. Free some space and try again',
  blocked: 'this browser’s storage does not answer: it is blocked, or the page is open in a private window',
};

/** What could not be written to the device, why, and the ways out: the file, or another try. Nothing while all is written. */
export function UnsavedBar() {
  const { waiting, failed, problem } = useSaveState();
  const unsaved = [...waiting.values()].filter((site) => failed.has(site.id));
  if (unsaved.length === 0 || problem === null) return null;
  return (
    <div className={styles.bar} role="alert">
      {unsaved.map((site) => (
        <p key={site.id}>
          <strong>{site.name || 'Site without a name'} is not saved.</strong> It is in this tab only, because{' '}
          {WHY[problem]}. Download the file before you close the tab.
        </p>
      ))}
      <div className={styles.ways}>
        {unsaved.map((site) => (
          <Action key={site.id} look="primary" onPress={() => saveSiteFile(site)}>
            {unsaved.length === 1 ? 'Download the file' : `Download ${site.name}`}
          </Action>
        ))}
        <Action onPress={saveAgain}>Try again</Action>
      </div>
    </div>
  );
}
