import { landOf } from '@footmark/dig';
import { derive } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { drawInTheWay } from './dig/drawDigs';
import { draw } from './draw';
import { joinDrawings } from './joinDrawings';
import { digOf, siteWith } from './testing/digPicture';

describe('what stands in the way, drawn by itself', () => {
  it('is with the site without it what is drawn at once', () => {
    const site = siteWith();
    const derived = derive(site);
    const dig = digOf(site);
    const options = { highlight: { dig: 't' }, dig: { ...dig, land: landOf(derived) } };
    const joined = joinDrawings(draw(site, derived), drawInTheWay(site, derived, options));
    const whole = draw(site, derived, options);
    expect(joined).toEqual(whole);
    expect(joined.layers.find((l) => l.name === 'excavation')?.primitives.length).toBeGreaterThan(3);
    expect(joinDrawings(whole, null)).toBe(whole);
  });
});
