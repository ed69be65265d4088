import type { CautionCode } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { words } from '../words';

/** What must be said wherever a dig is planned. */
const HERE: readonly CautionCode[] = [
  'people-decide',
  'trench-safety',
  'call-before-digging',
  'hand-dig',
  'private-lines',
  'trees',
  'boundaries',
];

/** The cautions of a dig: nothing here takes the place of the people who decide on the ground. */
export function DigCautions() {
  return (
    <aside className={cards.caution} aria-label="Cautions">
      {HERE.map((code) => {
        const { title, text } = words.cautionText(code);
        return (
          <p key={code}>
            <strong>{title}</strong> {text}
          </p>
        );
      })}
    </aside>
  );
}
