import type { Land } from '@footmark/dig';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** Whose land each stretch of each pipe is on, with the flow: it decides who pays and who must be asked. */
export function LandFold({ land }: { readonly land: Land }) {
  const site = useSite();
  if (land.stretches.length === 0) return null;
  return (
    <Fold title="Whose land" result={words.landText(land.stretches, site.units)}>
      {site.paths.map((path) => {
        const own = land.stretches.filter((s) => s.path === path.id);
        if (own.length === 0) return null;
        return (
          <div key={path.id} className={cards.section}>
            <h3>{words.targetName({ kind: 'path', id: path.id }, site)}</h3>
            <dl className={cards.facts}>
              {own.map(({ from, to, whose, features }) => (
                <Fact
                  key={from}
                  name={`${words.sureText(from, site.units)} to ${words.sureText(to, site.units)}`}
                  note={features.map((id) => words.landName(id, site)).join(', ')}
                >
                  {words.whoseName(whose)}
                </Fact>
              ))}
              {land.crossings
                .filter((c) => c.path === path.id)
                .map(({ feature, station, from, to }) => (
                  <Fact
                    key={`${feature}/${station}`}
                    name={`Crosses ${words.landName(feature, site)}`}
                    note={from === to ? undefined : `${words.whoseName(from)} to ${words.whoseName(to)}.`}
                  >
                    {words.sureText(station, site.units)}
                  </Fact>
                ))}
            </dl>
          </div>
        );
      })}
    </Fold>
  );
}
