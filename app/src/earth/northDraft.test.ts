import type { North } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { draftOfNorth, northOfDraft } from './northDraft';

const from = { of: 'f1', at: 'a' };
const to = { of: 'f1', at: 'b' };

const whole: readonly North[] = [
  { by: 'assumed' },
  { by: 'control' },
  { by: 'typed', azimuth: 0 },
  { by: 'line', from, to, azimuth: 1.25 },
  { by: 'compass', from, to, reading: 0, declination: -0.15 },
];

describe('northOfDraft', () => {
  it.each(whole)('gives back what was opened: $by', (north) => {
    expect(northOfDraft(draftOfNorth(north))).toEqual(north);
  });

  it('waits for every part', () => {
    for (const north of whole) {
      const draft = draftOfNorth(north);
      if (draft.azimuth !== undefined) expect(northOfDraft({ ...draft, azimuth: undefined })).toBeNull();
      if (draft.from !== null) expect(northOfDraft({ ...draft, from: null })).toBeNull();
      if (draft.to !== null) expect(northOfDraft({ ...draft, to: from })).toBeNull();
      if (draft.declination !== undefined)
        expect(northOfDraft({ ...draft, declination: undefined })).toBeNull();
    }
  });
});
