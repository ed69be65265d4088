import { bendTable, type Otherwise, type RerouteAsk } from '@footmark/reroute';
import { formatDiameter, formatSlope, leastFall, parseNumber, ruleValue } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { MeasureField } from '../controls/MeasureField';
import { Tick } from '../controls/Tick';
import { DiameterField, LengthField, SlopeField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { changeAsk } from './waysSession';

const MOST_BENDS = 20;

/** What of this one search is asked otherwise than the rules and the levels of the site have it. */
export function OtherwiseFold({ ask }: { readonly ask: RerouteAsk }) {
  const site = useSite();
  const { otherwise } = ask;
  const change = <K extends keyof Otherwise>(key: K, value: Otherwise[K] | undefined) => {
    const { [key]: _, ...others } = otherwise;
    changeAsk({ otherwise: value === undefined ? others : { ...others, [key]: value } });
  };
  const { withoutBends: without = [], socket } = otherwise;
  const allBends = bendTable(site, ask.diameter, socket === undefined ? {} : { socket });
  const count = Object.keys(otherwise).length;
  const { length, diameter } = site.units;
  const small = (metres: number) => formatDiameter(metres, diameter);
  return (
    <Fold
      title="Levels, fall and fittings"
      result={count === 0 ? 'as the site and its rules' : `${count} said otherwise`}
    >
      <div className={cards.section}>
        <div className={cards.pair}>
          <LengthField
            label="Invert where it starts"
            value={otherwise.startInvert}
            placeholder="as the old pipe"
            allowNegative
            onChange={(level) => change('startInvert', level)}
          />
          <LengthField
            label="Invert where it arrives"
            value={otherwise.endInvert}
            placeholder="as is known there"
            allowNegative
            onChange={(level) => change('endInvert', level)}
          />
        </div>
        <SlopeField
          label="Least fall"
          value={otherwise.leastFall}
          placeholder={formatSlope(
            leastFall(site, ask.diameter).value,
            length === 'm' ? 'percent' : 'in/ft',
            { plain: true },
          )}
          onChange={(fall) => change('leastFall', fall)}
        />
        <div className={cards.pair}>
          <MeasureField
            label="Bends at most"
            value={otherwise.mostBends}
            placeholder={String(Math.round(ruleValue(site, 'routeBends')))}
            parse={(text) => parseNumber(text, { most: MOST_BENDS })}
            print={String}
            onChange={(bends) => change('mostBends', bends === undefined ? undefined : Math.round(bends))}
          />
          <DiameterField
            label="Straight between fittings"
            value={otherwise.leastStraight}
            placeholder={small(ruleValue(site, 'routeStraight'))}
            onChange={(straight) => change('leastStraight', straight)}
          />
        </div>
        <DiameterField
          label="Fittings reach past their arc"
          value={otherwise.socket}
          placeholder={small(ruleValue(site, 'fittingSocket'))}
          onChange={(socket) => change('socket', socket)}
        />
        {allBends.map(({ id, laying }) => (
          <Tick
            key={id}
            isSelected={!without.includes(id)}
            onChange={(laid) => {
              const others = without.filter((name) => name !== id);
              const next = laid ? others : [...others, id];
              change('withoutBends', next.length === 0 ? undefined : next);
            }}
          >
            {`${id} bend, ${small(laying)} from its corner to its end`}
          </Tick>
        ))}
        <Tick
          isSelected={otherwise.anyHeading === true}
          onChange={(any) => change('anyHeading', any ? true : undefined)}
        >
          May come in from any side, not only with the flow
        </Tick>
      </div>
    </Fold>
  );
}
