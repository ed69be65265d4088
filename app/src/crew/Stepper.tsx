import { FOOT_M, INCH_M, type Units } from '@footmark/site';
import { Action } from '../controls/Action';
import styles from './found.module.css';

/** What one press of the small and of the large button adds, in metres and as it stands on them. */
const STEPS: Record<Units['length'], readonly [Step, Step]> = {
  'ft-in': [
    { metres: INCH_M, text: '1″' },
    { metres: FOOT_M, text: '1′' },
  ],
  ft: [
    { metres: FOOT_M / 10, text: '0.1 ft' },
    { metres: FOOT_M, text: '1 ft' },
  ],
  m: [
    { metres: 0.02, text: '2 cm' },
    { metres: 0.2, text: '20 cm' },
  ],
};

type Step = { readonly metres: number; readonly text: string };

type Props = {
  readonly label: string;
  /** Metres; undefined: not measured. */
  readonly value: number | undefined;
  /** Where it starts from when nothing is measured yet. */
  readonly start?: number;
  readonly least?: number;
  readonly units: Units;
  readonly print: (metres: number) => string;
  /** What less and more are called. */
  readonly ways: readonly [string, string];
  readonly onChange: (metres: number) => void;
};

/** A length by large buttons: two steps down, what it is, two steps up. */
export function Stepper({ label, value, start = 0, least = -1000, units, print, ways, onChange }: Props) {
  const [small, large] = STEPS[units.length];
  const by = (metres: number) => onChange(Math.max(least, rounded((value ?? start) + metres, small.metres)));
  const [less, more] = ways;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not lay its children out in a row in every browser
    <div className={styles.stepper} role="group" aria-label={label}>
      <Action look="icon" aria-label={`${less} ${large.text}`} onPress={() => by(-large.metres)}>
        −{large.text}
      </Action>
      <Action look="icon" aria-label={`${less} ${small.text}`} onPress={() => by(-small.metres)}>
        −{small.text}
      </Action>
      <output>{value === undefined ? '?' : print(value)}</output>
      <Action look="icon" aria-label={`${more} ${small.text}`} onPress={() => by(small.metres)}>
        +{small.text}
      </Action>
      <Action look="icon" aria-label={`${more} ${large.text}`} onPress={() => by(large.metres)}>
        +{large.text}
      </Action>
    </div>
  );
}

/** To whole small steps: ten times an inch is ten inches, whatever binary fractions make of it. */
function rounded(metres: number, step: number): number {
  const steps = Math.round(metres / step);
  return steps === 0 ? 0 : steps * step;
}
