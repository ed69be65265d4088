import type { DrainCheck, DrainChecks } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
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
    <Fold title="The drain itself" result={resultText()}>
      {drains.paths.map((check) => (
        <div key={check.path} className={cards.section}>
          <h3>{words.targetName({ kind: 'path', id: check.path }, site)}</h3>
          <DrainFacts check={check} />
        </div>
      ))}
    </Fold>
  );

  function resultText(): string {
    const [first, ...others] = drains.findings;
    if (first === undefined) return 'as the code asks';
    const title = words.digFindingTitle(first, site);
    return others.length === 0 ? title : `${title}, and ${others.length} more`;
  }
}

function DrainFacts({ check }: { readonly check: DrainCheck }) {
  const { units } = useSite();
  const { fall, cover, tap, cleanouts } = check;
  const missing = cleanouts.filter((c) => c.by === null);
  return (
    <dl className={cards.facts}>
      <Fact name="Fall that is asked" note={`Along ${words.sureText(check.developed, units)} of pipe.`}>
        {words.sureText(fall.required, units)}
      </Fact>
      {fall.available === null ? (
        <Fact name="Fall that there is">not known</Fact>
      ) : (
        <Fact
          name="Fall that there is"
          note={`From ${words.sureText(fall.available.from, units)} to ${words.sureText(fall.available.to, units)}, where ${words.sureText(fall.available.required, units)} is asked: ${words.slopeVerdictName(fall.available.verdict)}.`}
        >
          {words.dropText(fall.available.available, units)}{' '}
          {words.giveOrTakeText(fall.available.sigma * WITHIN_95, units)}
        </Fact>
      )}
      {check.flow === null ? null : (
        <Fact
          name="When it runs full"
          note={
            check.flow.scours
              ? `Fast enough to carry solids along: ${words.velocityText(check.flow.asked, units)} is.`
              : `Too slow to carry solids along: ${words.velocityText(check.flow.asked, units)} would.`
          }
        >
          {words.velocityText(check.flow.velocity, units)}, {words.dischargeText(check.flow.discharge, units)}
        </Fact>
      )}
      <Fact
        name="Least cover"
        {...(cover.least === null ? {} : { note: `At ${words.sureText(cover.least.station, units)}.` })}
      >
        {cover.least === null ? 'not known' : words.belowGroundText(cover.least.cover, units)}
      </Fact>
      {tap === null ? null : (
        <Fact name="Depth at the tap">
          {tap.depth === null ? 'not known' : words.belowGroundText(tap.depth.depth, units)}
        </Fact>
      )}
      <Fact name="Cleanouts asked for and missing">
        {missing.length === 0
          ? 'none'
          : `${missing.length}, at ${missing.map((c) => words.sureText(c.station, units)).join(', ')}`}
      </Fact>
    </dl>
  );
}
