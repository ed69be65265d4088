import { ArrowLeft } from 'lucide-react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { NewerVersion } from '../offline/NewerVersion';
import { useProgram } from '../offline/newerVersion';
import styles from './AboutScreen.module.css';
import thirdParty from './thirdParty.json';

/** What the program is, where what one draws is kept, and whose work it stands on. */
export function AboutScreen() {
  const [, go] = useLocation();
  const { isKept } = useProgram();
  return (
    <main className={styles.page}>
      <Action onPress={() => go('/')}>
        <ArrowLeft size={20} aria-hidden /> All sites
      </Action>
      <h1>About Footmark</h1>
      <section aria-label="On this device">
        <h2>On this device</h2>
        <p>
          {isKept
            ? 'The whole program is on this device and starts without a network.'
            : 'Once the page has been open for a moment with a network, the program stays on this device, where the browser allows it.'}{' '}
          To have it among the other programs, choose “Install” or “Add to the home screen” in the browser’s
          menu.
        </p>
        <p>
          Sites stay in this browser’s storage. Nothing is sent anywhere unless you give the address of your
          own team’s database, and nothing is fetched from anyone else.
        </p>
        <NewerVersion />
      </section>
      <section aria-label="Work of others">
        <h2>Work of others</h2>
        <p>
          Footmark stands on these libraries and typefaces, with thanks.{' '}
          <a href="./third-party.txt">Their licences in full</a>.
        </p>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Name</th>
              <th scope="col">Version</th>
              <th scope="col">Licence</th>
            </tr>
          </thead>
          <tbody>
            {thirdParty.map(({ name, version, licence }) => (
              <tr key={name}>
                <td>{name}</td>
                <td>{version}</td>
                <td>{licence}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </main>
  );
}
