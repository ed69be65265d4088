import { azimuthBetween, distance as distanceBetween } from '@footmark/geometry';
import {
  changeUnderlay,
  formatBearing,
  type Pixel,
  parseAzimuth,
  pixelToPlan,
  type Underlay,
} from '@footmark/site';
import { useEffect, useState } from 'react';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { MeasureField } from '../controls/MeasureField';
import { LengthField } from '../controls/unitFields';
import { edit, useDerived } from '../session/siteSession';
import { notify } from '../session/workbench';
import { pickPixel, usePictureHand } from './pictureHand';
import slider from './pictures.module.css';

/** Two places in a picture nearer than this (pixels) are one tap that trembled. */
const LEAST_SPAN_PX = 8;

type Ends = { readonly from: Pixel | null; readonly to: Pixel | null };

/** Brings a picture to scale by a length that is known between two of its places. The first stays where it is. */
export function SpanForm({ underlay }: { readonly underlay: Underlay }) {
  const { id, fit } = underlay;
  const derived = useDerived();
  const span = fit.by === 'span' ? fit : null;
  const [ends, setEnds] = useState<Ends>({ from: span?.from ?? null, to: span?.to ?? null });
  const waiting = usePictureHand((hand) => hand.onPixel !== null);
  const { from, to } = ends;

  useEffect(() => {
    usePictureHand.setState({
      marks: [
        ...(from === null ? [] : [{ pixel: from, label: 'A' }]),
        ...(to === null ? [] : [{ pixel: to, label: 'B' }]),
      ],
    });
  }, [from, to]);
  useEffect(() => () => usePictureHand.setState({ marks: [], onPixel: null }), []);

  const pickBoth = () => {
    setEnds({ from: null, to: null });
    pickPixel((first) => {
      setEnds({ from: first, to: null });
      pickSecond(first);
    });
  };
  const pickSecond = (first: Pixel) =>
    pickPixel((second) => {
      if (distanceBetween(first, second) < LEAST_SPAN_PX) {
        notify(
          'Both taps fell on the same place. Tap the other end, as far away as the known length reaches.',
        );
        pickSecond(first);
      } else setEnds({ from: first, to: second });
    });

  const stopPicking = () => {
    pickPixel(null);
    setEnds({ from: span?.from ?? null, to: span?.to ?? null });
  };

  const scaleTo = (distance: number) => {
    const place = derived.underlays.get(id);
    if (from === null || to === null || place === undefined) return;
    const [at, end] = [pixelToPlan(place, from), pixelToPlan(place, to)];
    edit('Scale the picture by a known length', (s) =>
      changeUnderlay(s, {
        id,
        facts: { fit: { by: 'span', from, to, distance, at, azimuth: azimuthBetween(at, end) } },
      }),
    );
  };
  const held = span !== null && span.from === from && span.to === to ? span : null;
  return (
    <div className={styles.section}>
      {waiting ? (
        <p className={slider.asks}>
          {from === null
            ? 'Tap one end of a length that you know: a corner of the house, an end of a boundary. It stays where it is.'
            : 'Tap the other end of that length.'}
        </p>
      ) : null}
      {from !== null && to !== null ? (
        <LengthField
          label="From A to B"
          value={held?.distance}
          onChange={(length) => {
            if (length === undefined || length <= 0) return;
            scaleTo(length);
          }}
          hint="As it was taped, or as it is written on the plat"
        />
      ) : null}
      {held === null ? null : (
        <MeasureField
          label="Direction from A to B"
          value={held.azimuth}
          required
          parse={parseAzimuth}
          print={(azimuth) => formatBearing(azimuth, { plain: true })}
          onChange={(azimuth) =>
            azimuth !== undefined &&
            edit('Turn the picture', (s) => changeUnderlay(s, { id, facts: { fit: { ...held, azimuth } } }))
          }
        />
      )}
      {waiting ? (
        <Action onPress={stopPicking}>Cancel</Action>
      ) : (
        <Action onPress={pickBoth}>
          {from === null ? 'Tap both ends in the picture' : 'Tap other ends'}
        </Action>
      )}
    </div>
  );
}
