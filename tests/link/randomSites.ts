import { addControl, openSiteValue, resolvePoints, type Site, setSpot, soundEdit } from '@footmark/site';
import { Dice, seeded } from '../../packages/site/src/testing/dice';
import { evidenceEdits } from '../../packages/site/src/testing/evidenceEdits';

const EDITS = 8;

/** A site after a sequence of random edits, the same for a seed: numbers of all sizes, evidence, fits taken, and a point on the earth. */
export function randomSite(from: Site, seed: number): Site {
  const random = seeded(seed);
  let site = from;
  let ids = 0;
  const edits: readonly ((dice: Dice) => Site | null)[] = [
    ...Object.values(evidenceEdits),
    ...Array.from({ length: 10 }, () => (d: Dice) => setSpot(d.site, { ref: d.ref, spot: d.spot() })),
    (d) =>
      addControl(d.site, {
        control: {
          id: d.newId(),
          point: d.point(),
          latitudeDeg: 45 + d.random() / 1000,
          longitudeDeg: d.upTo(180, 180),
          accuracy: d.upTo(5, 10_000),
          source: 'typed',
        },
      }),
  ];
  for (let i = 0; i < EDITS; i++) {
    const dice = new Dice(site, resolvePoints(site).points, random, () => `new${seed}-${ids++}`);
    const edited = dice.pick(edits)(dice);
    if (edited !== null && soundEdit(site, edited).ok) site = edited;
  }
  const opened = openSiteValue(JSON.parse(JSON.stringify(site)));
  if (!opened.ok) throw new Error(`seed ${seed}: ${JSON.stringify(opened.failure)}`);
  return opened.site;
}
