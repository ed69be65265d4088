import { type FittedRun, formatLength, WITHIN_95 } from '@footmark/site';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './fit.module.css';

const SCALE_DECIMALS = 4;

/** What was said of each run against what the fit makes of it. */
export function RunsTable({ runs }: { readonly runs: readonly FittedRun[] }) {
  const site = useSite();
  const { units } = site;
  if (runs.length === 0) return null;
  // side by side they are told to the same digit
  const counterText = (metres: number) =>
    formatLength(metres, units.length === 'm' ? 'm' : 'ft', { decimals: 2 });
  const scaleText = (scale: number) => `× ${scale.toFixed(SCALE_DECIMALS)}`;
  return (
    <>
      {runs.map((fitted) => {
        const run = site.runs.find((r) => r.id === fitted.id);
        const { scale, zero, entryLeg } = fitted;
        return (
          <table key={fitted.id} className={styles.runs}>
            <thead>
              <tr>
                <th scope="col">Run {run?.letter}</th>
                <th scope="col">said</th>
                <th scope="col">fits</th>
                <th scope="col">19 of 20 within</th>
              </tr>
            </thead>
            <tbody>
              <tr>
                <td>Counter’s scale</td>
                <td>{scaleText(scale.said)}</td>
                <td>{scaleText(scale.fitted)}</td>
                <td>± {(WITHIN_95 * scale.sigma).toFixed(SCALE_DECIMALS)}</td>
              </tr>
              <tr>
                <td>Counter at zero</td>
                <td>{counterText(zero.said)}</td>
                <td>{counterText(zero.fitted)}</td>
                <td>{words.giveOrTakeText(WITHIN_95 * zero.sigma, units)}</td>
              </tr>
              {entryLeg.sigma === 0 ? null : (
                <tr>
                  <td>Cable in the riser</td>
                  <td>{counterText(entryLeg.said)}</td>
                  <td>{counterText(entryLeg.fitted)}</td>
                  <td>{words.giveOrTakeText(WITHIN_95 * entryLeg.sigma, units)}</td>
                </tr>
              )}
            </tbody>
          </table>
        );
      })}
    </>
  );
}
