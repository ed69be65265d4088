import { type LayerName, layerNames } from '@footmark/drawing';
import { X } from 'lucide-react';
import { Action } from '../controls/Action';
import { Tick } from '../controls/Tick';
import { useWorkbench } from '../session/workbench';
import styles from './cards.module.css';

const NAMES: Record<LayerName, string> = {
  pavement: 'Pavement',
  land: 'Boundaries',
  buildings: 'Buildings',
  structures: 'Fences and walls',
  services: 'Services',
  trees: 'Trees and hedges',
  'root-zones': 'Root zones',
  excavation: 'Digs and spoil',
  coverage: 'What the camera saw',
  zones: 'Search zones and reach',
  pipe: 'Pipes',
  fitted: 'Fitted lines',
  drain: 'Cleanouts, stacks, mains',
  ties: 'Tapes',
  clearances: 'Clearances',
  marks: 'Marks',
  survey: 'Reference points',
  notes: 'Notes and photos',
};

/** What the plan shows and what it keeps back. */
export function LayersCard({ onClose }: { readonly onClose: () => void }) {
  const hidden = useWorkbench((w) => w.hiddenLayers);
  const setShown = (layer: LayerName, shown: boolean) => {
    const next = new Set(hidden);
    if (shown) next.delete(layer);
    else next.add(layer);
    useWorkbench.setState({ hiddenLayers: next });
  };
  return (
    <section className={styles.card} aria-label="Layers">
      <div className={styles.head}>
        <h2>Layers</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      <div>
        {layerNames.toReversed().map((layer) => (
          <Tick key={layer} isSelected={!hidden.has(layer)} onChange={(shown) => setShown(layer, shown)}>
            {NAMES[layer]}
          </Tick>
        ))}
      </div>
      <Action
        onPress={() => useWorkbench.setState({ hiddenLayers: new Set() })}
        isDisabled={hidden.size === 0}
      >
        Show everything
      </Action>
    </section>
  );
}
