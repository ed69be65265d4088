import { changeUnderlay, removeUnderlay, type Underlay } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowLeft, ImageUp, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components';
import styles from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { Tick } from '../controls/Tick';
import { edit, useDerived, useSite } from '../session/siteSession';
import { replacePicture, useArrival } from './addPicture';
import { FilePick } from './FilePick';
import { PairsForm } from './PairsForm';
import { takePicture, usePictureHand } from './pictureHand';
import { pictureImage, useArrivedPictures } from './pictureImages';
import slider from './pictures.module.css';
import { SpanForm } from './SpanForm';

type Way = Underlay['fit']['by'];

/** One picture under the plan: how it is brought to scale, and how it shows. */
export function UnderlayCard({ underlay }: { readonly underlay: Underlay }) {
  const { id, name, fit } = underlay;
  const about = useDerived().findings.filter(
    (f) => 'underlay' in f.values && f.values.underlay === (name || id),
  );
  const [way, setWay] = useState<Way>(fit.by);
  const set = (what: string, facts: Partial<Underlay>) => edit(what, (s) => changeUnderlay(s, { id, facts }));
  const remove = () => {
    takePicture(null);
    edit(`Remove ${name || 'the picture'}`, (s) => removeUnderlay(s, { id }));
  };
  const chooseWay = (next: Way) => {
    usePictureHand.setState({ onPixel: null, marks: [] });
    setWay(next);
  };
  return (
    <section className={styles.card} aria-label={name || 'Picture'}>
      <div className={styles.head}>
        <Action look="quiet" onPress={() => takePicture(null)}>
          <ArrowLeft size={20} aria-hidden /> Yard
        </Action>
        <Action look="quiet" onPress={remove}>
          <Trash2 size={20} aria-hidden /> Remove
        </Action>
      </div>
      <h2 className={styles.title}>Picture under the plan</h2>
      <Missing underlay={underlay} />
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      <Segments
        label="Placed by"
        value={way}
        options={[
          { id: 'finger', name: 'Eye' },
          { id: 'span', name: 'Known length' },
          { id: 'pairs', name: 'Points' },
        ]}
        onChange={chooseWay}
      />
      {way === 'finger' ? <ByEye underlay={underlay} /> : null}
      {way === 'span' ? <SpanForm underlay={underlay} /> : null}
      {way === 'pairs' ? <PairsForm underlay={underlay} /> : null}
      <ScaleLine underlay={underlay} />
      <OpacitySlider underlay={underlay} />
      <div className={styles.pair}>
        <Tick
          isSelected={underlay.shown}
          onChange={(shown) => set(shown ? 'Show the picture' : 'Hide the picture', { shown })}
        >
          Shown
        </Tick>
        <Tick
          isSelected={underlay.locked}
          onChange={(locked) => set(locked ? 'Lock the picture' : 'Unlock the picture', { locked })}
        >
          Locked
        </Tick>
      </div>
      <TextLine label="Name" value={name} onCommit={(next) => set('Name the picture', { name: next })} />
    </section>
  );
}

function ByEye({ underlay: { fit, locked } }: { readonly underlay: Underlay }) {
  const text = locked
    ? 'It is locked. Unlock it to move it by hand.'
    : fit.by === 'pairs'
      ? 'It is held by its points. Remove them under Points to move it by hand.'
      : 'Drag it on the plan. Two fingers, or a drag beside it, move the plan itself.';
  return <p className={styles.empty}>{text}</p>;
}

function ScaleLine({ underlay }: { readonly underlay: Underlay }) {
  const { units } = useSite();
  const place = useDerived().underlays.get(underlay.id);
  if (place === undefined) {
    return null;
  }
  return (
    <p className={styles.empty}>
      The picture covers {lengthText(place.metresPerPixel * underlay.widthPx, units)} by{' '}
      {lengthText(place.metresPerPixel * underlay.heightPx, units)}
      {underlay.fit.by === 'finger' ? ', by eye.' : '.'}
    </p>
  );
}

function OpacitySlider({ underlay }: { readonly underlay: Underlay }) {
  const dimmed = usePictureHand((hand) => hand.dimmed);
  return (
    <Slider
      className={slider.slider ?? ''}
      minValue={10}
      maxValue={100}
      step={5}
      value={Math.round((dimmed ?? underlay.opacity) * 100)}
      onChange={(percent) => usePictureHand.setState({ dimmed: percent / 100 })}
      onChangeEnd={(percent) => {
        usePictureHand.setState({ dimmed: null });
        if (percent / 100 !== underlay.opacity) {
          edit('Dim the picture', (s) =>
            changeUnderlay(s, { id: underlay.id, facts: { opacity: percent / 100 } }),
          );
        }
      }}
      formatOptions={{ style: 'unit', unit: 'percent' }}
    >
      <Label className={slider.label ?? ''}>Strength</Label>
      <SliderOutput className={slider.output ?? ''} />
      <SliderTrack className={slider.track ?? ''}>
        <SliderThumb className={slider.thumb ?? ''} />
      </SliderTrack>
    </Slider>
  );
}

/** Says when the picture itself is not here, and takes it again. */
function Missing({ underlay }: { readonly underlay: Underlay }) {
  useArrivedPictures();
  const { busy, problem } = useArrival();
  const image = pictureImage(underlay.file);
  if (image === null || image.is === 'ready') return null;
  return (
    <div className={styles.section}>
      <p className={styles.problem}>
        {image.is === 'missing'
          ? 'This picture is not on this device: a site file carries where a picture lies, not the picture. Choose the same file again.'
          : 'The stored picture can no longer be shown. Choose the same file again.'}
      </p>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      <FilePick onFile={(file) => void replacePicture(file, underlay)} isDisabled={busy !== null}>
        <ImageUp size={20} aria-hidden /> Choose the file
      </FilePick>
    </div>
  );
}
