import { X } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { EvidenceList } from './EvidenceList';
import { FitActions } from './FitActions';
import { FitStatus } from './FitStatus';
import { useFit } from './fitSession';
import { MovesSection } from './MovesSection';
import { PairsSection } from './PairsSection';
import { SureFold } from './SureFold';
import { SuspectsSection } from './SuspectsSection';

/** How runs, lines and all that is known of them agree: what does not fit, what the fit would change, and what it rests on. */
export function FitCard({ onClose }: { readonly onClose: () => void }) {
  const { fit } = useFit();
  return (
    <section className={cards.card} aria-label="How it agrees">
      <div className={cards.head}>
        <h2>How it agrees</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      <FitStatus />
      <FitActions />
      {fit === null ? null : <SuspectsSection fit={fit} />}
      <PairsSection />
      {fit === null ? null : (
        <>
          <MovesSection fit={fit} />
          <EvidenceList fit={fit} />
        </>
      )}
      <SureFold />
    </section>
  );
}
