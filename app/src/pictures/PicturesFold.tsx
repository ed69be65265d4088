import type { Underlay } from '@footmark/site';
import { ChevronRight, ImagePlus } from 'lucide-react';
import { Button } from 'react-aria-components';
import styles from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { addPicture, useArrival } from './addPicture';
import { FilePick } from './FilePick';
import { takePicture } from './pictureHand';

/** The pictures under the plan, and the way to another. */
export function PicturesFold() {
  const { underlays } = useSite();
  const { busy, problem } = useArrival();
  return (
    <Fold title="Picture under the plan" isOpen={problem !== null}>
      {underlays.length === 0 ? (
        <p className={styles.empty}>
          Lay a photo of a plat, a sketch or a screenshot of a map under the plan, bring it to scale by a
          length that is known, and draw over it. It stays on this device.
        </p>
      ) : (
        <ul className={styles.rows}>
          {underlays.map((underlay) => (
            <li key={underlay.id}>
              <Button className={styles.row ?? ''} onPress={() => takePicture(underlay.id)}>
                <span className={styles.grow}>
                  {underlay.name || 'Picture'}
                  <small>{stateText(underlay)}</small>
                </span>
                <ChevronRight size={20} aria-hidden />
              </Button>
            </li>
          ))}
        </ul>
      )}
      {problem === null ? null : (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
      <FilePick onFile={(file) => void addPicture(file)} isDisabled={busy !== null}>
        <ImagePlus size={20} aria-hidden /> {busy === null ? 'Add a picture' : `Reading ${busy}`}
      </FilePick>
    </Fold>
  );
}

function stateText({ fit, shown, locked }: Underlay): string {
  const how = { finger: 'by eye', span: 'to scale by a length', pairs: 'fitted to points' }[fit.by];
  return [how, ...(shown ? [] : ['hidden']), ...(locked ? ['locked'] : [])].join(', ');
}
