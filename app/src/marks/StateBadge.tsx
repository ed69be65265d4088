import type { MarkState } from '@footmark/site';
import { Calculator, CircleCheckBig, Flag, type LucideIcon, Radio, Shovel, SprayCan } from 'lucide-react';
import { words } from '../words';
import styles from './marks.module.css';

const ICONS: Record<MarkState, LucideIcon> = {
  computed: Calculator,
  located: Radio,
  painted: SprayCan,
  flagged: Flag,
  dug: Shovel,
  found: CircleCheckBig,
};

/** How far a mark has come, as icon and word. */
export function StateBadge({ state }: { readonly state: MarkState }) {
  const Icon = ICONS[state];
  return (
    <span className={styles.badge} {...(state === 'found' ? { 'data-done': true } : {})}>
      <Icon size={15} aria-hidden /> {words.markStateName(state)}
    </span>
  );
}
