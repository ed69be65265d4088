import type { Way } from '@footmark/reroute';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { usePrices } from './prices';
import styles from './reroute.module.css';
import { rowsOf } from './rowsOf';

/** All ways side by side, a row for each thing that they take. */
export function WayTable({
  ways,
  chosen,
}: {
  readonly ways: readonly Way[];
  readonly chosen: string | null;
}) {
  const site = useSite();
  const prices = usePrices();
  const columns = ways.map((way) => rowsOf(way, site, prices));
  const [first = []] = columns;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that is wider than its card is scrolled with the keys
    <section className={styles.scroll} tabIndex={0} aria-label="Ways side by side">
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">
              <span className={styles.hidden}>What it takes</span>
            </th>
            {ways.map((way, i) => (
              <th key={way.id} scope="col" data-chosen={way.id === chosen || undefined}>
                {i + 1} {words.wayName(way.is)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {first.map(({ name }, row) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {ways.map((way, i) => (
                <td key={way.id} data-chosen={way.id === chosen || undefined}>
                  {columns[i]?.[row]?.text ?? ''}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
