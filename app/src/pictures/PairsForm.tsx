import { distance, type Point } from '@footmark/geometry';
import {
  changeUnderlay,
  type Derived,
  type DerivedUnderlay,
  type Pixel,
  pixelToPlan,
  type Ref,
  refKey,
  type Site,
  type Underlay,
  type UnderlayFit,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Plus, X } from 'lucide-react';
import { useEffect, useState } from 'react';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { PointList } from '../measure/PointList';
import { pointName } from '../measure/pointChoices';
import { dropPick, pickPoint } from '../session/picking';
import { edit, useDerived, useSite } from '../session/siteSession';
import { notify } from '../session/workbench';
import { pickPixel, usePictureHand } from './pictureHand';
import { upAzimuth } from './picturePlace';
import slider from './pictures.module.css';

type Pair = Extract<UnderlayFit, { by: 'pairs' }>['pairs'][number];

/** Pairs that a fit needs: two give scale, turn and place exactly, each further one is a check. */
const FEWEST_PAIRS = 2;

/** By this name the form waits for a point of the plan. */
const PAIR_PICK = 'picture-pair';

/** Fits a picture to points of the plan: each pair is a place in the picture and the point that it shows. */
export function PairsForm({ underlay }: { readonly underlay: Underlay }) {
  const { id, fit } = underlay;
  const site = useSite();
  const derived = useDerived();
  const [waitingPairs, setWaitingPairs] = useState<readonly Pair[]>([]); // fewer than a fit needs
  const [pixel, setPixel] = useState<Pixel | null>(null);
  const waiting = usePictureHand((hand) => hand.onPixel !== null);
  const pairs = fit.by === 'pairs' ? fit.pairs : waitingPairs;

  useEffect(() => {
    const marks = pairs.map((pair, i) => {
      const to = placeOfPair(pair, derived);
      return { pixel: pair.pixel, label: String(i + 1), ...(fit.by === 'pairs' && to ? { to } : {}) };
    });
    usePictureHand.setState({
      marks: pixel === null ? marks : [...marks, { pixel, label: String(pairs.length + 1) }],
    });
  }, [pairs, pixel, derived, fit.by]);
  useEffect(
    () => () => {
      usePictureHand.setState({ marks: [], onPixel: null });
      dropPick(PAIR_PICK);
    },
    [],
  );

  const setPairs = (what: string, next: readonly Pair[]) => {
    if (next.length >= FEWEST_PAIRS) {
      setWaitingPairs([]);
      edit(what, (s) => changeUnderlay(s, { id, facts: { fit: { by: 'pairs', pairs: [...next] } } }));
      return;
    }
    setWaitingPairs(next);
    const place = derived.underlays.get(underlay.id);
    if (fit.by !== 'pairs' || place === undefined) return;
    // too few to hold it: it stays where it lies, by eye
    edit(what, (s) => changeUnderlay(s, { id, facts: { fit: byEye(underlay, place) } }));
  };
  const addPair = () =>
    pickPixel((at) => {
      setPixel(at);
      pickPoint(PAIR_PICK, (point) => completePair(at, point));
    });
  const stopAdding = () => {
    pickPixel(null);
    setPixel(null);
    dropPick(PAIR_PICK);
  };
  const completePair = (at: Pixel, point: Ref) => {
    setPixel(null);
    dropPick(PAIR_PICK);
    if (pairs.some((pair) => pair.to.is === 'point' && refKey(pair.to.point) === refKey(point))) {
      notify(
        `${pointName(site, point)} is in the list already. Remove that pair first, or choose another point.`,
      );
      return;
    }
    setPairs('Fit the picture to a point', [...pairs, { pixel: at, to: { is: 'point', point } }]);
  };
  const misses = missesOf(underlay, pairs, derived);
  const worst = misses.reduce<number>((most, miss) => Math.max(most, miss ?? 0), 0);
  return (
    <div className={styles.section}>
      {pairs.length === 0 ? (
        <p className={styles.empty}>
          Tap a place in the picture, then the point of the plan that it shows. Two pairs place the picture;
          each further one checks it.
        </p>
      ) : (
        <ol className={styles.rows}>
          {pairs.map((pair, i) => (
            <li key={JSON.stringify(pair.to)}>
              <div className={slider.pairRow}>
                <span className={styles.grow}>
                  {i + 1}. {pairName(site, pair)}
                  <small>{missText(site, misses[i] ?? null, worst, pairs.length)}</small>
                </span>
                <Action
                  look="icon"
                  aria-label={`Remove pair ${i + 1}, ${pairName(site, pair)}`}
                  onPress={() =>
                    setPairs(
                      'Remove a point of the picture',
                      pairs.filter((_, j) => j !== i),
                    )
                  }
                >
                  <X size={20} aria-hidden />
                </Action>
              </div>
            </li>
          ))}
        </ol>
      )}
      {waiting ? (
        <p className={slider.asks}>Tap a place in the picture that you can also find on the plan.</p>
      ) : null}
      {pixel === null ? null : (
        <>
          <p className={slider.asks}>Now tap the point of the plan that it shows, or choose it.</p>
          <PointList label="Point of the plan" onChoose={(point) => completePair(pixel, point)} />
        </>
      )}
      {pairs.length === 1 && !waiting && pixel === null ? (
        <p className={styles.empty}>One more pair, and the picture moves into place.</p>
      ) : null}
      {waiting || pixel !== null ? (
        <Action onPress={stopAdding}>Cancel</Action>
      ) : (
        <Action onPress={addPair}>
          <Plus size={18} aria-hidden /> Add a pair
        </Action>
      )}
    </div>
  );
}

/** By pair: how far (m) its place in the picture falls from its point; null without a point or before there is a fit. */
function missesOf(underlay: Underlay, pairs: readonly Pair[], derived: Derived): readonly (number | null)[] {
  const place = underlay.fit.by === 'pairs' ? derived.underlays.get(underlay.id) : undefined;
  return pairs.map((pair) => {
    const given = placeOfPair(pair, derived);
    return place === undefined || given === undefined
      ? null
      : distance(pixelToPlan(place, pair.pixel), given);
  });
}

/** The place in the plan that a pair's place in the picture is fitted to. */
function placeOfPair({ to }: Pair, derived: Derived): Point | undefined {
  return to.is === 'place' ? to.at : derived.points.get(refKey(to.point))?.at;
}

function missText(site: Site, miss: number | null, worst: number, pairs: number): string {
  if (miss === null) return 'no fit yet';
  if (pairs === FEWEST_PAIRS) return 'fits exactly: two pairs check nothing';
  const off = `${lengthText(miss, site.units)} off`;
  return miss === worst ? `${off}, the worst` : off;
}

function pairName(site: Site, { to }: Pair): string {
  return to.is === 'point' ? pointName(site, to.point) : 'A place on the plan';
}

function byEye(underlay: Underlay, place: DerivedUnderlay): UnderlayFit {
  const middle = pixelToPlan(place, { x: underlay.widthPx / 2, y: underlay.heightPx / 2 });
  return { by: 'finger', middle, metresPerPixel: place.metresPerPixel, upAzimuth: upAzimuth(place) };
}
