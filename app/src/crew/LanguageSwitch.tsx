import { languages } from '@footmark/words';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import { words } from '../words';
import styles from './crew.module.css';
import { chooseLanguage } from './crewLanguage';

/** Every language that there are words in, by its tag; spoken it has its whole name. */
export function LanguageSwitch() {
  return (
    <RadioGroup
      className={styles.languages ?? ''}
      value={words.language}
      onChange={chooseLanguage}
      orientation="horizontal"
    >
      <Label className={styles.unseen ?? ''}>{words.crew.label('language')}</Label>
      {languages.map(({ language, crew }) => (
        <Radio
          key={language}
          value={language}
          className={styles.language ?? ''}
          aria-label={crew.languageName}
        >
          {language.split('-')[0]?.toUpperCase()}
        </Radio>
      ))}
    </RadioGroup>
  );
}
