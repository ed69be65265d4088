import { languages } from '@footmark/words';
import { ArrowLeft, Send } from 'lucide-react';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './crew.module.css';
import { saveAnswerAgain, useCrewSession } from './crewSession';
import { LanguageSwitch } from './LanguageSwitch';
import { SendBack } from './SendBack';

type Props = { readonly index: number; readonly count: number };

/** Above all: which site, which of its marks, the language, and the way to send back. */
export function CrewTop({ index, count }: Props) {
  const { name } = useSite();
  const saved = useCrewSession((s) => s.saved);
  const otherState = useCrewSession((s) => s.otherState);
  const [, go] = useLocation();
  const [sends, setSends] = useState(false);
  const { label, placeText } = words.crew;
  return (
    <header className={styles.top}>
      <Action look="icon" aria-label={label('all-sites')} onPress={() => go('/')}>
        <ArrowLeft size={24} aria-hidden />
      </Action>
      <div className={styles.name}>
        <h1>{name}</h1>
        <p>
          {count === 0 ? '' : `${placeText(index, count)} · `}
          <span role="status">{label(saved === 'failed' ? 'not-saved' : saved)}</span>
        </p>
      </div>
      {languages.length > 1 ? <LanguageSwitch /> : null}
      <Action look="icon" aria-label={label('send-back')} onPress={() => setSends(true)}>
        <Send size={24} aria-hidden />
      </Action>
      {saved === 'failed' ? (
        <p className={styles.alarm} role="alert">
          {label('not-saved')} <Action onPress={saveAnswerAgain}>{label('try-again')}</Action>
        </p>
      ) : otherState ? (
        <p className={styles.alarm}>{label('other-state')}</p>
      ) : null}
      {sends ? <SendBack onClose={() => setSends(false)} /> : null}
    </header>
  );
}
