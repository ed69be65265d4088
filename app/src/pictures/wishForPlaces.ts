import { create } from 'zustand';
import { recall, remember } from '../session/onDevice';

const KEY = 'footmark-photo-places';

type Wish = {
  /** Photos that are taken in keep where they were taken. They do not unless it is wished. */
  readonly keeps: boolean;
};

export const useWishForPlaces = create<Wish>()(() => ({ keeps: recall(KEY) === 'kept' }));

/** Wishes the other from now on; gives what is wished then. Without storage the wish lasts as long as the page. */
export function turnPlaces(): boolean {
  const keeps = !useWishForPlaces.getState().keeps;
  useWishForPlaces.setState({ keeps });
  remember(KEY, keeps ? 'kept' : 'left out');
  return keeps;
}
