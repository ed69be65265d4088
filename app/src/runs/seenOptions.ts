import { observationKindIds } from '@footmark/site';
import { words } from '../words';

/** What a camera sees, to choose from. */
export const seenOptions = observationKindIds.map((id) => ({ id, name: words.observationName(id) }));
