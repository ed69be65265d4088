import { Fold } from '../cards/Fold';
import { part, placed } from '../parts/part';
import { Shown } from '../parts/Shown';

export const earthFields = part(async () => (await import('./EarthFields')).EarthFields);

/** Where north is, and where on the earth the site lies: a part of the yard's card. */
export function EarthFold() {
  return (
    <Fold title="North and place on the earth">
      <Shown of={placed(earthFields, {})} />
    </Fold>
  );
}
