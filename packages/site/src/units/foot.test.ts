import { describe, expect, it } from 'vitest';
import { FOOT_M, INCH_M, US_SURVEY_FOOT_M } from './foot';

// Source: Federal Register 85 No. 193, 62698 (5 Oct 2020); STANDARDS G6. The ratio and the 2,000,000 ft case are computed from it.
describe('the two feet', () => {
  it('has the international foot at 0.3048 m and the inch at a twelfth of it', () => {
    expect(FOOT_M).toBe(0.3048);
    expect(INCH_M * 12).toBeCloseTo(0.3048, 15);
  });

  it('has the survey foot at 1200/3937 m = 0.304800609601 m', () => {
    expect(US_SURVEY_FOOT_M).toBeCloseTo(0.304800609601, 12);
    expect(US_SURVEY_FOOT_M * 3937).toBeCloseTo(1200, 10);
  });

  it('has them two parts in a million apart: 4.000 ft in 2,000,000 ft', () => {
    expect(FOOT_M / US_SURVEY_FOOT_M).toBeCloseTo(0.999998, 12);
    expect(2_000_000 * (US_SURVEY_FOOT_M / FOOT_M - 1)).toBeCloseTo(4, 3);
  });
});
