import type { PathProfile } from '@footmark/site';
import { expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { en } from './en';

const { derived } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });

it('the heights of a profile are told by what they are counted from, and fall only where levels are known', () => {
  const profile = derived.profiles.get('p1');
  if (profile === undefined) throw new Error('the lateral has no profile');
  const whole = { slope: 0.02 } as PathProfile['whole']; // all that is told of it
  const from = (part: Partial<PathProfile>) => en.profileHeightsText({ ...profile, ...part });
  expect(from({ heights: 'below-ground', whole: null })).toMatch(
    /depths below a ground taken as even\. What/,
  );
  expect(from({ heights: 'levels', whole: null })).toMatch(/^Levels above the datum of the site\. What/);
  expect(from({ heights: 'levels', whole })).toMatch(/the pipe falls 2\.0 %\. What/);
  expect(from({ heights: 'levels', whole, unused: [] })).not.toMatch(/left aside/);
});
