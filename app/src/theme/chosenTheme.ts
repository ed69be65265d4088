import { type Theme, themes } from '../canvas/palette';
import { usePlanView } from '../canvas/planView';
import { recall, remember } from '../session/onDevice';

const KEY = 'footmark-theme';

/** Takes up the theme that was chosen on this device, or the one that the device asks for. */
export function startTheme(): void {
  const stored = recall(KEY);
  const night = window.matchMedia('(prefers-color-scheme: dark)').matches;
  apply(themes.find((theme) => theme === stored) ?? (night ? 'night' : 'paper'));
}

/** Goes on to the next theme and remembers it. */
export function nextTheme(): void {
  const now = usePlanView.getState().theme;
  const next = themes[(themes.indexOf(now) + 1) % themes.length] ?? 'paper';
  apply(next);
  // without storage the choice lasts as long as the page
  remember(KEY, next);
}

function apply(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
  usePlanView.setState({ theme });
}
