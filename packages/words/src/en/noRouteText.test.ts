import type { Relaxation, RequestProblem } from '@footmark/route';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { relaxationText, routeProblemText, sidesText } from './noRouteText';

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
const FT = 0.3048;

describe('what is wrong with what is asked for', () => {
  const said = (problem: RequestProblem) => {
    const { text, cure } = routeProblemText(problem, site);
    return `${text} ${cure}`.trim();
  };

  it('is never cured by going on through what it would come back in', () => {
    expect(said({ code: 'end-inside', values: { end: 'end', obstacle: 'f1', depth: 2 * FT } })).toBe(
      'It would come back 2.0 ft inside House. Let it come back at another station, clear of that.',
    );
  });

  it.each([
    [0.3 * FT, 'Its end lies 0.3 ft higher than its start.'],
    [0, 'It has no fall: its end lies level with its start.'],
  ])('is that its end rises by %f m', (rise, text) => {
    expect(said({ code: 'end-not-lower', values: { end: 'end', rise } })).toBe(
      `${text} Check the levels of the pipe at both stations.`,
    );
  });

  it.each([
    [2 * FT, ' Only whoever may allow less can: 2.0 ft would leave room.'],
    [0, ''],
    [-FT, ''],
  ])('is that all ground is too near, where %f m would leave some', (most, cure) => {
    expect(said({ code: 'no-ground', values: { obstacle: 'f1', clearance: 10 * FT, most } })).toBe(
      `10.0 ft clear of House leaves no ground to lay it in.${cure}`,
    );
  });
});

describe('what would open a way', () => {
  it('says how the sides of a trench are kept that comes so near', () => {
    expect(sidesText(1)).toContain('cut back 1 across to 1 down at the most');
    expect(sidesText(0)).toMatch(/stand straight: shore them, or use a shield/);
  });

  it('says of a clearance what is kept and what is asked, equally fine', () => {
    const relaxation: Relaxation = {
      change: { is: 'less-clearance', obstacle: 'f2', from: 50 * FT, to: 0.61 },
      route: {
        points: [],
        bends: [],
        end: 'end',
        cost: { length: 60 * FT, areas: [], bends: 0, total: 60 * FT },
      },
    };
    expect(relaxationText(relaxation, site)).toBe('Keep 2.0 ft from Maple (50.0 ft asked): 60.0 ft of pipe.');
  });
});
