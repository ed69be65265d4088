import type { DerivedFrame } from '@footmark/site';
import styles from './NorthArrow.module.css';
import { NorthNeedle } from './NorthNeedle';

type Props = { readonly frame: DerivedFrame; readonly label: string };

/** True north on the plan, to look at: dashed where up is only taken for it. */
export function NorthSign({ frame: { northAzimuth, known }, label }: Props) {
  return (
    <div className={styles.north} data-known={known} role="img" aria-label={label}>
      <NorthNeedle turn={(-northAzimuth * 180) / Math.PI} />
    </div>
  );
}
