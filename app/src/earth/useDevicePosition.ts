import { useCallback, useEffect, useState } from 'react';

/** Where the device believes to be, WGS 84. */
export type DevicePosition = {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Metres, as the device states it. */
  readonly accuracy: number;
};

export type PositionSearch =
  | { readonly is: 'off' }
  | { readonly is: 'searching' }
  | { readonly is: 'found'; readonly position: DevicePosition }
  | { readonly is: 'failed'; readonly why: 'none' | 'refused' | 'unavailable' | 'too-slow' };

/** A first position may take this long under trees. */
const PATIENCE_MS = 60_000;

/** Follows the device's position while it is searched for; it gets better as the device stands still. */
export function useDevicePosition() {
  const [search, setSearch] = useState<PositionSearch>({ is: 'off' });
  const on = search.is === 'searching' || search.is === 'found';
  useEffect(() => {
    if (!on) return;
    const watch = navigator.geolocation.watchPosition(
      ({ coords }) =>
        setSearch({
          is: 'found',
          position: {
            latitudeDeg: coords.latitude,
            longitudeDeg: coords.longitude,
            accuracy: coords.accuracy,
          },
        }),
      ({ code }) => setSearch({ is: 'failed', why: FAILURES[code] ?? 'unavailable' }),
      { enableHighAccuracy: true, maximumAge: 0, timeout: PATIENCE_MS },
    );
    return () => navigator.geolocation.clearWatch(watch);
  }, [on]);
  const start = useCallback(
    () => setSearch('geolocation' in navigator ? { is: 'searching' } : { is: 'failed', why: 'none' }),
    [],
  );
  const stop = useCallback(() => setSearch({ is: 'off' }), []);
  return { search, start, stop };
}

/** By the codes of the Geolocation standard. */
const FAILURES: Readonly<Record<number, 'refused' | 'unavailable' | 'too-slow'>> = {
  1: 'refused',
  2: 'unavailable',
  3: 'too-slow',
};
