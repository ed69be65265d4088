import { I18nProvider } from 'react-aria-components';
import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { CrewScreen } from './crew/CrewScreen';
import { LinkScreen } from './link/LinkScreen';
import { HomeScreen } from './screens/HomeScreen';
import { SiteScreen } from './screens/SiteScreen';

/** The screens: the sites on this device, one site, one as its crew sees it, and what came with a link. The address keeps which, behind the #. */
export function App() {
  return (
    <I18nProvider locale="en-US">
      <Router hook={useHashLocation}>
        <Switch>
          <Route path="/crew/:id">{({ id }) => <CrewScreen key={id} id={id} />}</Route>
          <Route path="/link/:text">{({ text }) => <LinkScreen key={text} text={text} />}</Route>
          <Route path="/site/:id">{({ id }) => <SiteScreen key={id} id={id} />}</Route>
          <Route>
            <HomeScreen />
          </Route>
        </Switch>
      </Router>
    </I18nProvider>
  );
}
