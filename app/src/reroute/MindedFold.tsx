import {
  mindedBy,
  type RerouteAsk,
  sameTreatment,
  type Treated,
  type Treatment,
  treatedAs,
} from '@footmark/reroute';
import { parseNumber } from '@footmark/site';
import { useMemo } from 'react';
import { Fold } from '../cards/Fold';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import { LengthField } from '../controls/unitFields';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './reroute.module.css';
import { treat } from './waysSession';

const HOW = [
  { id: 'clear', name: 'Keep clear' },
  { id: 'cost', name: 'At a cost' },
  { id: 'free', name: 'Does not matter' },
] as const;

/** Times as dear as elsewhere, beside what a metre is anyway. */
const MOST_TIMES = 100;

/** What a route keeps clear of, goes through at a cost, or does not mind; each can be said otherwise. */
export function MindedFold({ ask }: { readonly ask: RerouteAsk }) {
  const site = useSite();
  const derived = useDerived();
  const minded = useMemo(() => mindedBy(site, derived, ask), [site, derived, ask]);
  if (minded.length === 0) return null;
  const otherwise = minded.filter((m) => ask.treat[m.id] !== undefined).length;
  return (
    <Fold
      title="What it minds"
      result={otherwise === 0 ? `${minded.length} things, as the rules say` : `${otherwise} said otherwise`}
    >
      <ul className={styles.list}>
        {minded.map((m) => (
          <li key={m.id} className={styles.minded}>
            <MindedRow minded={m} />
          </li>
        ))}
      </ul>
    </Fold>
  );
}

function MindedRow({ minded }: { readonly minded: Treated }) {
  const site = useSite();
  const name = words.mindedName(minded.id, minded.feature, site);
  const { usual, treatment } = minded;
  const change = (next: Treatment) => treat(minded.id, sameTreatment(next, usual) ? undefined : next);
  return (
    <>
      <Choice
        label={name}
        options={HOW}
        value={treatment.as}
        onChange={(as) => change(treatedAs(site, usual, as))}
      />
      {treatment.as === 'clear' ? (
        <LengthField
          label="By"
          value={treatment.clearance}
          required
          onChange={(clearance) => clearance !== undefined && change({ as: 'clear', clearance })}
        />
      ) : null}
      {treatment.as === 'cost' ? (
        <MeasureField
          label="Times more"
          value={treatment.perMetre}
          required
          parse={(text) => parseNumber(text, { most: MOST_TIMES })}
          print={String}
          onChange={(perMetre) => perMetre !== undefined && change({ as: 'cost', perMetre })}
        />
      ) : null}
    </>
  );
}
