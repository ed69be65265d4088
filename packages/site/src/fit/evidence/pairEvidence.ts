import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { netReading } from '../readingPlace';
import type { Tagged } from '../tagged';
import { addStation, stationOfReading } from '../wayStation';

/** One thing from two runs has one station. */
export function* pairEvidence(net: Net): Generator<Tagged> {
  for (const { id, a, b } of net.site.pairs) {
    const [one, other] = [netReading(net, a.reading), netReading(net, b.reading)];
    if (one === null || other === null || one.mark.place.path !== other.mark.place.path) continue;
    yield {
      tag: { is: 'pair', pair: id },
      observation: {
        kind: 'custom',
        id: `pair/${id}`,
        value: 0,
        sigma: sigmaOf(net.site, 'sameThing'),
        evaluate: (x) => (stationOfReading(net, one, x) ?? 0) - (stationOfReading(net, other, x) ?? 0),
        gradient: (x, out) => {
          addStation(net, one, x, 1, out);
          addStation(net, other, x, -1, out);
        },
      },
    };
  }
}
