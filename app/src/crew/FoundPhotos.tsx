import { Camera, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { keepPicture } from '../pictures/addPicture';
import { FilePick } from '../pictures/FilePick';
import { importPicture, PHOTO_LONGEST_PX } from '../pictures/importPicture';
import { useFileUrl } from '../pictures/useFileUrl';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './found.module.css';

/** A record has room for so many. */
const MOST_PHOTOS = 20;

type Props = {
  /** Ids of files on the device. */
  readonly photos: readonly string[];
  readonly onChange: (photos: readonly string[]) => void;
};

/** Photos of what was found, taken with the device's camera and kept on it. */
export function FoundPhotos({ photos, onChange }: Props) {
  const { id: site } = useSite();
  const [state, setState] = useState<'ready' | 'busy' | 'failed'>('ready');
  const { label } = words.crew;
  const take = async (file: File) => {
    setState('busy');
    const photo = await importPicture(file, PHOTO_LONGEST_PX);
    const kept = photo.ok ? await keepPicture(file.name, photo, site) : null;
    setState(kept === null ? 'failed' : 'ready');
    if (kept !== null) onChange([...photos, kept]);
  };
  return (
    <section className={styles.part} aria-label={label('photos')}>
      <FilePick
        camera
        onFile={(file) => void take(file)}
        isDisabled={state === 'busy' || photos.length >= MOST_PHOTOS}
      >
        <Camera size={24} aria-hidden /> {label(state === 'busy' ? 'reading-photo' : 'take-photo')}
      </FilePick>
      {state === 'failed' ? <p role="alert">{label('no-room')}</p> : null}
      <div className={styles.photos}>
        {photos.map((photo) => (
          <div key={photo}>
            <Thumb file={photo} />
            <Action
              look="icon"
              aria-label={label('remove-photo')}
              onPress={() => onChange(photos.filter((p) => p !== photo))}
            >
              <Trash2 size={22} aria-hidden />
            </Action>
          </div>
        ))}
      </div>
    </section>
  );
}

function Thumb({ file }: { readonly file: string }) {
  const url = useFileUrl(file);
  return typeof url === 'string' ? null : <img src={url.href} alt={words.crew.label('photos')} />;
}
