import type { DrainCheck, DrainChecks } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
import { giveOrTakeText, lengthText, sureText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** What the code asks of the drain itself: fall, cover, depth at the tap, cleanouts. */
export function DrainFold({ drains }: { readonly drains: DrainChecks }) {
  const site = useSite();
  if (drains.paths.length === 0) return null;
  return (
    <Fold title="The drain itself">
      {drains.paths.map((check) => (
        <div key={check.path} className={cards.section}>
          <h3>{words.targetName({ kind: 'path', id: check.path }, site)}</h3>
          <DrainFacts check={check} />
        </div>
      ))}
    </Fold>
  );
}

function DrainFacts({ check }: { readonly check: DrainCheck }) {
  const { units } = useSite();
  const { fall, cover, tap, cleanouts } = check;
  const missing = cleanouts.filter((c) => c.by === null);
  return (
    <dl className={cards.facts}>
      <Fact name="Fall that is asked" note={`Along ${lengthText(check.developed, units)} of pipe.`}>
        {sureText(fall.required, units)}
      </Fact>
      {fall.available === null ? (
        <Fact name="Fall that there is">not known</Fact>
      ) : (
        <Fact
          name="Fall that there is"
          note={`From ${lengthText(fall.available.from, units)} to ${lengthText(fall.available.to, units)}, where ${sureText(fall.available.required, units)} is asked: ${words.slopeVerdictName(fall.available.verdict)}.`}
        >
          {sureText(fall.available.available, units)}{' '}
          {giveOrTakeText(fall.available.sigma * WITHIN_95, units)}
        </Fact>
      )}
      <Fact
        name="Least cover"
        {...(cover.least === null ? {} : { note: `At ${lengthText(cover.least.station, units)}.` })}
      >
        {cover.least === null ? 'not known' : sureText(cover.least.cover, units)}
      </Fact>
      {tap === null ? null : (
        <Fact name="Depth at the tap">
          {tap.depth === null ? 'not known' : sureText(tap.depth.depth, units)}
        </Fact>
      )}
      <Fact name="Cleanouts that are asked and missing">
        {missing.length === 0 ? 'none' : missing.map((c) => lengthText(c.station, units)).join(', ')}
      </Fact>
    </dl>
  );
}
