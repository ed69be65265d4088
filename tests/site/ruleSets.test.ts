// What rule sets say of their values. OSHA prints its limits in metres too: 29 CFR 1926.652(a)(1) 1.52 m, 1926.651(c)(2) 1.22 m and
// 7.62 m, 1926.651(j)(2) .61 m. Canadian Common Ground Alliance, Best Practices 3-8 and 4-18: tolerance 1 m.

import {
  type RuleName,
  type RuleSetId,
  ruleGroups,
  ruleOf,
  ruleSetIds,
  ruleValue,
  treeRuleOf,
} from '@footmark/site';
import { en } from '@footmark/words';
import { describe, expect, it } from 'vitest';

const by = (set: RuleSetId) => ({ rules: { set, changed: [] } });
const METRIC = ['metric', 'britain', 'australia'] as const satisfies readonly RuleSetId[];
const CODES = [ruleGroups.trench, ruleGroups.separation, ruleGroups.drain].flatMap((group) =>
  Object.keys(group),
) as readonly RuleName[]; // keys of const tables
const ALL = Object.values(ruleGroups).flatMap((group) => Object.keys(group)) as readonly RuleName[]; // the same

describe.each(ruleSetIds)('%s', (set) => {
  it('has a source for every value, or says that it is a custom', () => {
    for (const rule of CODES) {
      const { row } = ruleOf(by(set), rule);
      if (row.basis === 'practice') expect(row.title, rule).toBe('common practice, no source');
      else expect(row.clause, rule).not.toBe('');
    }
  });
});

describe.each(METRIC)('%s, where people tape in metres', (set) => {
  it('has what US rules print in metres', () => {
    const told = (['protectionDepth', 'egressDepth', 'egressTravel', 'spoilSetback'] as const).map((rule) =>
      ruleValue(by(set), rule),
    );
    expect(told).toEqual([1.52, 1.22, 7.62, 0.61]);
  });

  // common practice, no source: where people tape in metres a custom is no odd number of millimetres; 75 mm is a size of pipe
  it('has its customs in round metres', () => {
    const odd = ALL.filter((rule) => {
      const { row } = ruleOf(by(set), rule);
      const steps = row.value / 0.025;
      return row.unit === 'm' && row.basis === 'practice' && Math.abs(steps - Math.round(steps)) > 1e-9;
    });
    expect(odd).toEqual([]);
  });

  it('says of every value of a US code that it is no law there', () => {
    for (const rule of CODES) {
      const { row } = ruleOf(by(set), rule);
      if (row.basis === 'practice' || row.title.startsWith('Canadian')) continue;
      expect(en.basisText(row), rule).toContain('a model value of the United States, not the law here');
    }
  });

  it('is not called by what it is not', () => {
    expect(en.ruleSetName(set)).toMatch(/US model values, no (local|UK|Australian) law/);
  });

  it('keeps what nobody has published otherwise', () => {
    for (const rule of ['fallSmall', 'fallMiddle', 'waterService', 'slopeC', 'cleanoutSpacing'] as const)
      expect(ruleValue(by(set), rule)).toBe(ruleValue(by('us-ipc'), rule));
  });
});

describe('trees and tolerance', () => {
  it('go by the standards of the place', () => {
    expect(METRIC.map((set) => treeRuleOf(by(set)))).toEqual(['bs-5837', 'bs-5837', 'as-4970']);
    expect(ruleValue(by('metric'), 'toleranceZone')).toBe(1);
  });

  it('of the United States are said to be theirs', () => {
    expect(en.basisText(ruleOf(by('us-ipc'), 'protectionDepth').row)).not.toContain('not the law here');
  });
});
