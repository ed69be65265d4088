import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Router, useRoute } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { bringSoon } from './parts/bringSoon';
import { type Placed, part, placed } from './parts/part';
import { Shown } from './parts/Shown';

const homeScreen = part(async () => (await import('./screens/HomeScreen')).HomeScreen);
const siteScreen = part(async () => {
  const [{ SiteScreen }, { startSession }] = await Promise.all([
    import('./screens/SiteScreen'),
    import('./session/startSession'),
  ]);
  startSession();
  return SiteScreen;
});

/** The two screens: the sites on this device, and one site. The address keeps which, behind the #. */
export function App() {
  return (
    <I18nProvider locale="en-US">
      <Router hook={useHashLocation}>
        <Screen />
      </Router>
    </I18nProvider>
  );
}

/** A screen stays until the code of the next is here; that of the others is brought while nothing else is to be done. */
function Screen() {
  useEffect(() => bringSoon([homeScreen, siteScreen]), []);
  return <Shown of={useScreen()} />;
}

function useScreen(): Placed {
  const [isSite, site] = useRoute('/site/:id');
  if (isSite) return placed(siteScreen, { id: site.id }, site.id);
  return placed(homeScreen, {});
}
