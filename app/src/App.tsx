import { I18nProvider } from 'react-aria-components';
import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { HomeScreen } from './screens/HomeScreen';
import { SiteScreen } from './screens/SiteScreen';

/** The two screens: the sites on this device, and one site. The address keeps which, behind the #. */
export function App() {
  return (
    <I18nProvider locale="en-US">
      <Router hook={useHashLocation}>
        <Switch>
          <Route path="/site/:id">{({ id }) => <SiteScreen key={id} id={id} />}</Route>
          <Route>
            <HomeScreen />
          </Route>
        </Switch>
      </Router>
    </I18nProvider>
  );
}
