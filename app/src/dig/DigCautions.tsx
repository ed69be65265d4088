import type { CautionCode } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { words } from '../words';

/** What must be said wherever a dig is planned. */
const HERE: readonly CautionCode[] = [
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
      <p>
        <strong>People decide, not this plan</strong> A competent person on site, the code officer, an
        arborist and a surveyor have the last word. Model values stand here until their own do.
      </p>
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
