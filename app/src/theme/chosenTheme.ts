import { type Theme, themes } from '../canvas/palette';
import { usePlanView } from '../canvas/planView';

const KEY = 'footmark-theme';

/** Takes up the theme that was chosen on this device, or the one that the device asks for. */
export function startTheme(): void {
  const stored = read();
  const night = window.matchMedia('(prefers-color-scheme: dark)').matches;
  apply(stored ?? (night ? 'night' : 'paper'));
}

/** Goes on to the next theme and remembers it. */
export function nextTheme(): void {
  const now = usePlanView.getState().theme;
  const next = themes[(themes.indexOf(now) + 1) % themes.length] ?? 'paper';
  apply(next);
  try {
    window.localStorage.setItem(KEY, next);
  } catch {
    // without storage the choice lasts as long as the page
  }
}

function apply(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
  usePlanView.setState({ theme });
}

function read(): Theme | undefined {
  try {
    const stored = window.localStorage.getItem(KEY);
    return themes.find((theme) => theme === stored);
  } catch {
    return undefined;
  }
}
