import { languages } from '@footmark/words';
import { create } from 'zustand';
import { recall, remember } from '../session/onDevice';

const KEY = 'footmark-crew-language';

/** The language of the crew view by its tag: what was chosen on this device, else the device's own where it is spoken here. */
export const useCrewLanguage = create<{ readonly tag: string }>()(() => ({
  tag: recall(KEY) ?? deviceLanguage(),
}));

export function chooseLanguage(tag: string): void {
  useCrewLanguage.setState({ tag });
  remember(KEY, tag);
}

function deviceLanguage(): string {
  const [own = ''] = (globalThis.navigator?.language ?? '').toLowerCase().split('-');
  return (languages.find((l) => l.language.split('-')[0] === own) ?? languages[0]).language;
}
