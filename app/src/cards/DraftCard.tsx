import { boundsOf } from '@footmark/drawing';
import { type FeatureKind, isPath, kindSpec, pointOwners, type Spot } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Check, Undo2, X } from 'lucide-react';
import { useCallback, useEffect, useState } from 'react';
import { keepInView } from '../canvas/planView';
import { showWithRoom } from '../canvas/showAll';
import { Action } from '../controls/Action';
import { ArcForm } from '../measure/ArcForm';
import { LegForm } from '../measure/LegForm';
import { PointList } from '../measure/PointList';
import { RectangleForm } from '../measure/RectangleForm';
import { SpotForm } from '../measure/SpotForm';
import { showCandidates } from '../session/picking';
import { useSite } from '../session/siteSession';
import { closingOffer } from '../tools/closingOffer';
import { draftPlaces } from '../tools/draftPlaces';
import { type DrawTool, isReady } from '../tools/tool';
import { cancelDrawing, finishDrawing, missingPoints, placeInTool, stepBack } from '../tools/useTool';
import { words } from '../words';
import styles from './cards.module.css';
import { Fold } from './Fold';

/** What is being drawn: a tap puts a point down, and everything can be typed as it was measured instead. */
export function DraftCard({ tool }: { readonly tool: DrawTool }) {
  const [measuring, setMeasuring] = useState(false);
  const site = useSite();
  const name = tool.subject.what === 'path' ? 'Pipe' : words.featureKindName(tool.subject.kind);
  const place = (spot: Spot) => {
    setMeasuring(false);
    placeInTool({ spot });
    const box = boundsOf(draftPlaces(site, [...tool.points, { spot }]));
    if (box !== null) keepInView(box);
  };
  const preview = useCallback(
    (spot: Spot | null) => {
      const at = spot && draftPlaces(site, [...tool.points, { spot }]).at(-1);
      showCandidates(at ? { chosen: at, other: null, swap: () => {} } : null);
    },
    [site, tool.points],
  );
  useEffect(() => () => showCandidates(null), []);
  const first = tool.points.length === 0;
  const legs = tool.shape !== 'point' && !first;
  const closing = closingOffer(tool, draftPlaces(site, tool.points));
  return (
    <section className={styles.card} aria-label={`Draw: ${name}`}>
      <div className={styles.head}>
        <h2>{name}</h2>
        <Action look="quiet" onPress={cancelDrawing}>
          <X size={20} aria-hidden /> Cancel
        </Action>
      </div>
      <p className={styles.empty}>{instruction(tool)}</p>
      {closing ? (
        <aside className={styles.offer}>
          <p>
            That leg comes back to the first corner, {lengthText(closing.off, site.units)} off. Is it the last
            one?
          </p>
          <Action look="primary" onPress={() => finishDrawing(closing.spot)}>
            Yes, close with it
          </Action>
        </aside>
      ) : null}
      {tool.shape === 'area' && tool.points.length === 1 ? (
        <Fold title="A rectangle" isOpen={isBuilt(tool)}>
          <RectangleForm
            onCorners={(spots) => {
              for (const spot of spots) placeInTool({ spot });
              finishDrawing();
              showWithRoom();
            }}
          />
        </Fold>
      ) : null}
      {legs ? <LegForm hasLegBefore={tool.points.length > 1} onLeg={place} onTyping={preview} /> : null}
      {legs && tool.subject.what === 'feature' && takesCurves(tool.subject.kind) ? (
        <Fold title="A curve">
          <ArcForm key={tool.points.length} hasLegBefore={tool.points.length > 1} onArc={place} />
        </Fold>
      ) : null}
      {measuring ? (
        <SpotForm
          self={null}
          spot={null}
          place={null}
          submit={tool.shape === 'point' ? `Place the ${name.toLowerCase()}` : 'Place this point'}
          onPlace={place}
          onCancel={() => setMeasuring(false)}
        />
      ) : (
        <div className={styles.actions}>
          <Action onPress={() => setMeasuring(true)}>
            {first ? 'Type how it was measured' : 'Measure the next point'}
          </Action>
          {tool.shape !== 'point' ? (
            <PointList label="Use a point that is there" onChoose={(point) => place({ by: 'at', point })} />
          ) : null}
        </div>
      )}
      {tool.shape === 'point' ? null : (
        <div className={styles.dock}>
          <Action look="primary" onPress={() => finishDrawing()} isDisabled={!isReady(tool)}>
            <Check size={20} aria-hidden /> Finish
          </Action>
          <Action onPress={stepBack} isDisabled={first}>
            <Undo2 size={20} aria-hidden /> Take back the last point
          </Action>
        </div>
      )}
    </section>
  );

  function instruction(of: DrawTool): string {
    const missing = missingPoints(of);
    if (of.subject.what === 'path') {
      const hasEntry = pointOwners(site).some((o) => !isPath(o) && kindSpec(o.kind).entry);
      if (of.points.length === 0) {
        return hasEntry
          ? 'Tap where the pipe begins at the house: a cleanout, a stack or the wall. Draw on with the flow, to the tap.'
          : 'Tap where the pipe begins at the house, then each bend, to the tap.';
      }
      return missing > 0 ? 'Tap the next bend, or the end.' : 'Tap the next bend, or finish at the tap.';
    }
    if (of.shape === 'point') return 'Tap the plan where it stands.';
    if (of.points.length === 0) {
      return of.shape === 'area' ? 'Tap the first corner.' : 'Tap where it begins.';
    }
    if (missing > 0) return 'Tap the next point, or type the leg as measured.';
    return of.shape === 'area'
      ? 'Tap the next corner, or finish: the last side closes by itself.'
      : 'Tap the next point, or finish.';
  }
}

/** Curves come on plats: of land, of the pavement along it and of its edges. */
function takesCurves(kind: FeatureKind): boolean {
  const { layer } = kindSpec(kind);
  return layer === 'land' || layer === 'pavement' || layer === 'structures';
}

/** Whether what is drawn is mostly a rectangle. */
function isBuilt(tool: DrawTool): boolean {
  return tool.subject.what === 'feature' && kindSpec(tool.subject.kind).layer === 'buildings';
}
