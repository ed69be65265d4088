import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Router, useRoute } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { ProgramLine } from './offline/ProgramLine';
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
const crewScreen = part(async () => {
  const [{ CrewScreen }, { startSession }] = await Promise.all([
    import('./crew/CrewScreen'),
    import('./session/startSession'),
  ]);
  startSession();
  return CrewScreen;
});
const linkScreen = part(async () => (await import('./link/LinkScreen')).LinkScreen);

const aboutScreen = part(async () => (await import('./about/AboutScreen')).AboutScreen);

/** The screens: the sites on this device, one site, one as its crew sees it, what came with a link, and what the program is. The address keeps which, behind the #. */
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
  const screen = useScreen();
  useEffect(() => bringSoon([homeScreen, siteScreen, crewScreen, linkScreen]), []);
  return (
    <>
      <Shown of={screen.of} />
      {screen.hasLine ? <ProgramLine /> : null}
    </>
  );
}

/** Which screen the address asks for, and whether the program's own line stands below it. */
function useScreen(): { readonly of: Placed; readonly hasLine: boolean } {
  const [isSite, site] = useRoute('/site/:id');
  const [isCrew, crew] = useRoute('/crew/:id');
  const [isLink, link] = useRoute('/link/:text');
  const [isAbout] = useRoute('/about');
  if (isSite) return { of: placed(siteScreen, { id: site.id }, site.id), hasLine: false };
  if (isCrew) return { of: placed(crewScreen, { id: crew.id }, crew.id), hasLine: false };
  if (isLink) return { of: placed(linkScreen, { text: link.text }, link.text), hasLine: false };
  if (isAbout) return { of: placed(aboutScreen, {}), hasLine: false };
  return { of: placed(homeScreen, {}), hasLine: true };
}
