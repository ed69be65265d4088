import { type SigmaName, setSigma, sigmas } from '@footmark/site';
import { RotateCcw } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './fit.module.css';
import { SigmaField } from './SigmaField';
import { sigmaGroups } from './sigmaGroups';

/** How sure each kind of measurement is on this site, and where that is known from. */
export function SureFold() {
  return (
    <Fold title="How sure things are">
      <p className={cards.empty}>
        Give or take for each kind of measurement: 2 of 3 lie within it. An empty field uses the value shown
        in grey.
      </p>
      {sigmaGroups.map(({ title, names }) => (
        <div key={title} className={cards.section}>
          <h3>{title}</h3>
          {names.map((name) => (
            <SigmaRow key={name} name={name} />
          ))}
        </div>
      ))}
    </Fold>
  );
}

function SigmaRow({ name }: { readonly name: SigmaName }) {
  const own = useSite().sigmas[name];
  const label = words.sigmaName(name);
  const set = (value: number | undefined) =>
    edit(`${value === undefined ? 'Reset' : 'Change'} how sure: ${label.toLowerCase()}`, (s) =>
      setSigma(s, { name, value }),
    );
  return (
    <div className={styles.sigma}>
      <SigmaField
        label={label}
        unit={sigmas[name].unit}
        value={own}
        usual={sigmas[name].value}
        hint={own === undefined ? words.basisText(sigmas[name]) : 'This site’s own value.'}
        onChange={set}
      />
      {own === undefined ? null : (
        <Action look="icon" aria-label={`Reset: ${label}`} onPress={() => set(undefined)}>
          <RotateCcw size={20} aria-hidden />
        </Action>
      )}
    </div>
  );
}
