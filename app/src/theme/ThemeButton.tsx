import { SunMoon } from 'lucide-react';
import { Action } from '../controls/Action';
import { nextTheme } from './chosenTheme';

/** Goes on to the next colours: paper, night, sun. */
export function ThemeButton({ label }: { readonly label: string }) {
  return (
    <Action look="icon" aria-label={label} onPress={nextTheme}>
      <SunMoon size={24} aria-hidden />
    </Action>
  );
}
