import { languages } from '@footmark/words';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { countsOf } from '../crew/answerEdits';
import { useCrewLanguage } from '../crew/crewLanguage';
import { LanguageSwitch } from '../crew/LanguageSwitch';
import { keepAnswer } from '../crew/office/cameAnswer';
import { hasSite } from '../storage/siteStore';
import { speak, words } from '../words';
import { CameSite } from './CameSite';
import styles from './link.module.css';
import { type LinkCame, openedLink } from './openedLink';

/** Where a link or a QR code leads: what came with it, and what can be done with that. */
export function LinkScreen({ text }: { readonly text: string }) {
  const [, go] = useLocation();
  const [came, setCame] = useState<LinkCame | null>(null);
  const language = useCrewLanguage((l) => l.tag);
  const spoken = languages.find((l) => l.language === language) ?? languages[0];
  speak(spoken);
  useEffect(() => {
    setCame(openedLink(text));
    return () => speak(languages[0]);
  }, [text]);
  useEffect(() => {
    document.documentElement.lang = spoken.language;
    return () => {
      document.documentElement.lang = languages[0].language;
    };
  }, [spoken]);
  const { label } = words.crew;
  return (
    <main className={styles.page}>
      <LanguageSwitch />
      {came === null ? null : <Came came={came} />}
      <p>{label('cautions-in-short')}</p>
      <Action onPress={() => go('/')}>{label('all-sites')}</Action>
    </main>
  );
}

function Came({ came }: { readonly came: LinkCame }) {
  const { label, codeText } = words.crew;
  if (!came.ok) {
    const { text, cure, problems } = words.linkProblemText(came.failure);
    return (
      <div role="alert">
        <h1>{text}</h1>
        <p>{cure}</p>
        <ul>
          {problems.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    );
  }
  if (came.is === 'waiting')
    return (
      <div role="status">
        <h1>{codeText(came.have, came.of)}</h1>
        <p>{label('scan-next')}</p>
      </div>
    );
  return came.is === 'site' ? <CameSite site={came.site} /> : <CameAnswer answer={came.answer} />;
}

function CameAnswer({ answer }: { readonly answer: Extract<LinkCame, { is: 'answer' }>['answer'] }) {
  const [, go] = useLocation();
  const [isHere, setHere] = useState<boolean | null>(null);
  const { label, answerText } = words.crew;
  useEffect(() => {
    hasSite(answer.site).then(setHere, () => setHere(false));
  }, [answer.site]);
  return (
    <>
      <h1>{label('answer-came')}</h1>
      <p className={styles.name}>{answer.by}</p>
      <p>{answerText(countsOf(answer))}</p>
      {isHere === false ? <p role="alert">{label('no-such-site')}</p> : null}
      <Action
        look="primary"
        isDisabled={isHere !== true}
        onPress={() => {
          keepAnswer(answer);
          go(`/site/${answer.site}`);
        }}
      >
        {label('see-answer')}
      </Action>
    </>
  );
}
