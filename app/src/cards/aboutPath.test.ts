import { openSiteValue } from '@footmark/site';
import { expect, it } from 'vitest';
import sample from '../../../packages/site/samples/rear-alley.json';
import { diggingFrom } from '../dig/digging';
import { derivedFrom } from '../session/siteSession';
import { aboutPath } from './aboutPath';

it('a slope that the levels leave open is told once on the card of its pipe', () => {
  const opened = openSiteValue(sample);
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  const { findings } = derivedFrom(opened.site);
  const unsure = findings.find((f) => f.code === 'slope-unsure');
  if (unsure?.at.kind !== 'path') throw new Error('the sample has one');
  const { id } = unsure.at;
  const ofPath = findings.filter((f) => f.at.kind === 'path' && f.at.id === id);
  expect(aboutPath(findings, id)).toEqual(ofPath.filter((f) => f !== unsure));
  // the section below tells it
  const concerns = diggingFrom(opened.site, null).findings.filter((f) => f.code === 'fall-not-sure');
  expect(concerns.map((f) => f.values)).toContainEqual(
    expect.objectContaining({ ...unsure.values, path: id }),
  );
});
