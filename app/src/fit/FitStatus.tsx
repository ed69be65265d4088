import type { RunsFit } from '@footmark/site';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './fit.module.css';
import { useFit, useWeighing } from './fitSession';

type Tone = 'plain' | 'good' | 'bad';

/** How the evidence stands, in a sentence or two; what was last known while it is weighed again. */
export function FitStatus() {
  const site = useSite();
  const derived = useDerived();
  const { fit } = useFit();
  const { busy, failed } = useWeighing();
  if (fit === null) {
    return (
      <p className={styles.status} role="status">
        {words.noFitText({ busy, failed })}
      </p>
    );
  }
  const { text, cure } = words.fitText(fit, site);
  const open = derived.pairSuggestions.length;
  const old = words.oldFitText({ busy, failed });
  return (
    <div className={styles.status} data-tone={toneOf(fit)} aria-busy={busy}>
      <p role="status">
        <strong>{text}</strong> {cure}
      </p>
      {open === 0 ? null : <p>{words.suggestedText(open)}</p>}
      {old === null ? null : <p {...(busy ? { className: styles.again } : {})}>{old}</p>}
    </div>
  );
}

function toneOf({ status, blunders, test }: RunsFit): Tone {
  if (status === 'no-evidence') return 'plain';
  return status === 'fitted' && blunders.length === 0 && test?.passed !== false ? 'good' : 'bad';
}
