import { type FitObservation, isEvidence, observationName, type RunsFit } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { EvidenceRow } from './EvidenceRow';

/** Under this share an error in an observation would hardly show in the fit. Common practice, no source. */
const LITTLE_CHECKED = 0.1;

/** A misfit of more standard deviations than this is out of the common: 1 in 1,000. Table of the normal distribution. */
const ODD = 3.291;

/** Everything that speaks for or against the lines and runs as drawn, the most surprising first; then what is set aside. */
export function EvidenceList({ fit }: { readonly fit: RunsFit }) {
  const site = useSite();
  const groups = grouped(fit.observations.filter((o) => isEvidence(o.tag)));
  if (groups.length + fit.aside.length === 0) return null;
  return (
    <div className={cards.section}>
      <h3>Evidence, what fits least first</h3>
      <ul className={cards.rows}>
        {groups.map(({ name, parts, worst }) => (
          <li key={name}>
            <EvidenceRow
              tag={worst.tag}
              observation={name}
              isOdd={Math.abs(worst.standardized) > ODD}
              note={
                parts.every((p) => p.redundancy < LITTLE_CHECKED)
                  ? `${words.offText(parts, site)}, but little else checks it`
                  : `${words.offText(parts, site)}, ${words.surpriseText(worst.standardized)}`
              }
            />
          </li>
        ))}
        {fit.aside.map((tag) => (
          <li key={observationName(tag)}>
            <EvidenceRow tag={tag} observation={observationName(tag)} note="set aside" />
          </li>
        ))}
      </ul>
    </div>
  );
}

type Group = {
  readonly name: string;
  readonly parts: readonly FitObservation[];
  readonly worst: FitObservation;
};

/** Observations by what they are about, the most surprising first. */
function grouped(observations: readonly FitObservation[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const o of observations) {
    const known = groups.get(o.name);
    const worse = known === undefined || size(o) > size(known.worst);
    groups.set(o.name, {
      name: o.name,
      parts: [...(known?.parts ?? []), o],
      worst: worse ? o : known.worst,
    });
  }
  return [...groups.values()].sort((a, b) => size(b.worst) - size(a.worst));
}

function size({ standardized }: FitObservation): number {
  return Math.abs(standardized);
}
