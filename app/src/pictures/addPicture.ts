import type { Point } from '@footmark/geometry';
import { addUnderlay, changeUnderlay, type Underlay } from '@footmark/site';
import { create } from 'zustand';
import { usePlanView } from '../canvas/planView';
import { currentSite, edit, useSiteSession } from '../session/siteSession';
import { goTo, notify } from '../session/workbench';
import { saveFile } from '../storage/fileStore';
import { newId } from '../tools/newId';
import { type ImportedPicture, importPicture, UNDERLAY_LONGEST_PX } from './importPicture';
import { importProblemText, scaledText, sizeText } from './importText';
import { takePicture } from './pictureHand';

/** The site file holds so many pictures. */
const MOST_PICTURES = 20;
/** How strongly a new picture shows: the ink of the plan stays the stronger. */
const FIRST_OPACITY = 0.7;
/** Share of the view's shorter side that the longer side of a new picture takes. */
const FIRST_SHARE = 0.8;

type Arrival = {
  /** The file that is being read. */
  readonly busy: string | null;
  /** Why the last file was not taken. */
  readonly problem: string | null;
};

/** What is happening to the file that was last given to the app. */
export const useArrival = create<Arrival>()(() => ({ busy: null, problem: null }));

/** Takes in a picture file and lays it by eye: about a plan point, or in the middle of the view. */
export async function addPicture(file: File, middle?: Point): Promise<void> {
  const site = currentSite();
  if (site.underlays.length >= MOST_PICTURES) {
    refuse(`A site holds ${MOST_PICTURES} pictures and this one has them all. Remove one first.`);
    return;
  }
  const stored = await takeIn(file, site.id);
  if (stored === null) return;
  const { camera, size } = usePlanView.getState();
  const shown = (Math.min(size.width, size.height) * FIRST_SHARE) / (camera?.pxPerMetre ?? 20);
  const underlay: Underlay = {
    id: newId('u'),
    name: nameOf(file),
    file: stored.file,
    widthPx: stored.widthPx,
    heightPx: stored.heightPx,
    fit: {
      by: 'finger',
      middle: middle ?? camera?.centre ?? { x: 0, y: 0 },
      metresPerPixel: shown / Math.max(stored.widthPx, stored.heightPx),
      upAzimuth: 0,
    },
    opacity: FIRST_OPACITY,
    shown: true,
    locked: false,
  };
  edit('Add a picture', (s) => addUnderlay(s, { underlay }));
  goTo('yard');
  takePicture(underlay.id);
  notify(
    stored.scaled ?? 'Drag the picture roughly into place, then give a known length or points to fit it to.',
  );
}

/** Gives an underlay whose picture is not on this device its picture again. It must be as large as the one that was fitted. */
export async function replacePicture(file: File, { id, widthPx, heightPx }: Underlay): Promise<void> {
  const stored = await takeIn(file, currentSite().id);
  if (stored === null) return;
  if (stored.widthPx !== widthPx || stored.heightPx !== heightPx) {
    refuse(
      `“${file.name}” has ${sizeText(stored)} pixels, the picture that was fitted here had ${sizeText({ widthPx, heightPx })}. Choose that one, or add this as another picture.`,
    );
    return;
  }
  edit('Give the picture again', (s) => changeUnderlay(s, { id, facts: { file: stored.file } }));
}

/** Reads a file and keeps its picture on the device. Null when that failed; the reason is then shown. */
async function takeIn(file: File, siteId: string) {
  useArrival.setState({ busy: file.name || 'picture', problem: null });
  try {
    const picture = await importPicture(file, UNDERLAY_LONGEST_PX);
    if (!picture.ok) {
      refuse(importProblemText(file.name, picture));
      return null;
    }
    const kept = await keepPicture(file.name, picture, siteId);
    if (kept === null) {
      refuse(`This device has no room left for “${file.name}”. Free some space and add it again.`);
      return null;
    }
    if (useSiteSession.getState().site?.id !== siteId) return null; // the site was left meanwhile
    return { ...picture, file: kept, scaled: scaledText(file.name, picture) };
  } finally {
    useArrival.setState({ busy: null });
  }
}

/** Stores a picture that was taken in; its id, or null when the device has no room. */
export async function keepPicture(
  name: string,
  { blob, widthPx, heightPx }: ImportedPicture,
  site: string,
): Promise<string | null> {
  const id = newId('i');
  try {
    await saveFile({ id, site, blob, name, widthPx, heightPx, addedAt: Date.now() });
    return id;
  } catch {
    return null;
  }
}

function refuse(problem: string): void {
  useArrival.setState({ problem });
  notify(problem);
}

/** The file's name without its ending, as one short line. */
function nameOf(file: File): string {
  return file.name.replace(/\.[a-z0-9]{2,5}$/i, '').slice(0, 80) || 'Picture';
}
