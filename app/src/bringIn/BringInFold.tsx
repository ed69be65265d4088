import { FolderInput } from 'lucide-react';
import { useRef, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { BringInForm } from './BringInForm';
import type { ChosenFile } from './useReadIn';

/** A file above this is not read at all. */
const MOST_BYTES = 60_000_000;

const TYPES = ['.geojson', '.json', '.kml', '.kmz', '.dxf', '.csv', '.txt'];

/** Maps, drawings and points of others become things of this yard, once it is said what they are and where they lie. */
export function BringInFold() {
  const [chosen, setChosen] = useState<ChosenFile | null>(null);
  const [isTooLarge, setTooLarge] = useState(false);
  const count = useRef(0);
  const choose = async (file: File) => {
    setTooLarge(file.size > MOST_BYTES);
    if (file.size > MOST_BYTES) return;
    count.current += 1;
    const bytes = new Uint8Array(await file.arrayBuffer());
    setChosen({ file: count.current, name: file.name, bytes });
  };
  return (
    <Fold title="Bring a file in" result="GeoJSON, KML, DXF, points">
      <div className={cards.section}>
        <FileTrigger
          acceptedFileTypes={TYPES}
          onSelect={(files) => {
            const [file] = files ?? [];
            if (file !== undefined) void choose(file);
          }}
        >
          <Action wide>
            <FolderInput size={20} aria-hidden /> Choose a file
          </Action>
        </FileTrigger>
        {isTooLarge ? (
          <p role="alert">This file is larger than 60 MB. Save a part of it, of this yard alone.</p>
        ) : null}
        {chosen === null ? (
          <p className={cards.empty}>
            Map layers, drawings and lists of points. What a file does not say is asked, and you see where it
            would lie before anything comes in.
          </p>
        ) : (
          <BringInForm key={chosen.file} chosen={chosen} onClose={() => setChosen(null)} />
        )}
      </div>
    </Fold>
  );
}
