import { asBuiltTies, type PipeLevel } from '@footmark/site';
import { lengthText } from '@footmark/words';
import cards from '../../cards/cards.module.css';
import { Fact } from '../../cards/Fact';
import { Fold } from '../../cards/Fold';
import { useDerived, useSite } from '../../session/siteSession';
import { words } from '../../words';

type Props = { readonly path: string; readonly name: string };

/** The points of a pipe as it was built, with tapes from what will still stand. */
export function AsBuiltTies({ path, name }: Props) {
  const site = useSite();
  const derived = useDerived();
  const { units } = site;
  const points = asBuiltTies(site, derived, path);
  return (
    <Fold title={`${name}: ties that last`} result={`${points.filter((p) => p.measured).length} found`}>
      <dl className={cards.facts}>
        {points.map(({ vertex, station, measured, level, ties }) => (
          <Fact
            key={vertex}
            name={`${lengthText(station, units)} along, ${measured ? 'measured' : 'assumed'}`}
            note={
              ties === null
                ? 'No two lasting points in reach.'
                : ties.pair.map((tie) => words.tieText(tie, site)).join('; ')
            }
          >
            {level === null ? 'depth not known' : levelText(level, (m) => lengthText(m, units))}
          </Fact>
        ))}
      </dl>
    </Fold>
  );
}

function levelText(level: PipeLevel, length: (metres: number) => string): string {
  switch (level.is) {
    case 'invert':
      return `invert at ${length(level.level)}`;
    case 'depth-to-top':
      return `${length(level.depth)} to the top`;
    case 'depth-to-invert':
      return `${length(level.depth)} to the invert`;
  }
}
