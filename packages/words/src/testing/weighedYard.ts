import { addFeature, addPair, derive, fitRuns, type Site } from '@footmark/site';
import { dugYard } from './digFindingSamples';
import { need } from './need';
import { sampleYard } from './sampleYard';

/* The sample yard as it was drawn, with digs, and with evidence that is weighed. */

const FT = 0.3048;
const { site: bareSite, derived: bareDerived } = sampleYard({
  length: 'ft',
  diameter: 'in',
  direction: 'bearing',
});
export const bare = bareSite;
export const { units } = bare;
export const dug = dugYard('ft');

const locate = (id: string, y: number, reading: string) => (site: Site) =>
  addFeature(site, {
    feature: {
      id,
      kind: 'locate',
      name: '',
      vertices: [{ id: 'a', spot: { by: 'coordinates', x: 32 * FT, y: y * FT } }],
      fields: { reading: { run: 'r1', reading }, method: 'crossed' },
    },
  });

/** The yard with two locates that agree, one that does not, and a pair. */
export const yard = addPair(
  [locate('l1', -15.24, 'q1'), locate('l2', -64.95, 'q3'), locate('l3', -40, 'q3')].reduce(
    (s, add) => add(s),
    bare,
  ),
  { pair: { id: 'pair', a: { run: 'r1', reading: 'q1' }, b: { run: 'r2', reading: 'q5' } } },
);
export const derived = derive(yard);
export const fit = need(fitRuns(yard, derived));
export const bareFit = need(fitRuns(bare, bareDerived));
export const mark = need(derived.marks.find((m) => m.label === 'A3'));
export const seen = need(derived.marks.find((m) => m.label === 'B1'));
export const ties = need(need(seen.place).ties);
export const found = need(derived.locates[0]);
export const profile = need(derived.profiles.get('p1'));
export const accuracy = need(derived.accuracy);
