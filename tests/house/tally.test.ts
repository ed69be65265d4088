import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ROOT } from './repository';

type Tally = Readonly<{ passed: number; failed: number; skipped: number }>;
type TallyTool = Readonly<{
  tallyOfCode: (code: number) => Tally;
  tallyOfVitest: (report: unknown, code: number) => Tally;
  tallyOfPlaywright: (report: unknown, code: number) => Tally;
  sum: (tallies: readonly Tally[]) => Tally;
  resultLine: (tally: Tally) => string;
}>;

const load = (tool: string): Promise<unknown> =>
  import(/* @vite-ignore */ pathToFileURL(join(ROOT, '.tools', tool)).href);

// The tools are plain scripts without declarations; these are the shapes that their comments state.
const tool = (await load('tally.mjs')) as TallyTool;
const { cleanEnvironment } = (await load('environment.mjs')) as {
  cleanEnvironment: (from: Record<string, string>) => Record<string, string>;
};

const vitest = (passed: number, failed: number, files: readonly unknown[] = [{}]) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  numPendingTests: 2,
  numTodoTests: 1,
  testResults: files.map((file) => ({ status: 'passed', assertionResults: [], ...(file as object) })),
});
const playwright = (expected: number, unexpected: number) => ({
  stats: { expected, unexpected, flaky: 1, skipped: 4 },
});

describe('the result line cannot hide a failure', () => {
  it('adds up and shows the skipped only when there are some', () => {
    const all = tool.sum([
      tool.tallyOfCode(0),
      tool.tallyOfVitest(vitest(10, 0), 0),
      tool.tallyOfPlaywright(playwright(5, 0), 0),
    ]);
    expect(all).toEqual({ passed: 17, failed: 0, skipped: 7 });
    expect(tool.resultLine(all)).toBe('17 passed, 0 failed, 7 skipped');
    expect(tool.resultLine({ passed: 3, failed: 1, skipped: 0 })).toBe('3 passed, 1 failed');
  });

  it.each<[string, Tally, number]>([
    ['a step that ends with an error', tool.tallyOfCode(2), 1],
    [
      'a failed unit test',
      tool.tallyOfVitest(vitest(3, 2, [{ status: 'failed', assertionResults: [{ status: 'failed' }] }]), 1),
      2,
    ],
    ['a test file that does not load', tool.tallyOfVitest(vitest(3, 0, [{ status: 'failed' }]), 1), 1],
    ['an error outside of the unit tests', tool.tallyOfVitest(vitest(3, 0), 1), 1],
    ['no unit test at all', tool.tallyOfVitest(vitest(0, 0), 0), 1],
    ['no report of the unit tests', tool.tallyOfVitest(null, 0), 1],
    ['a failed journey', tool.tallyOfPlaywright(playwright(3, 1), 1), 1],
    ['an error outside of the journeys', tool.tallyOfPlaywright(playwright(3, 0), 1), 1],
    [
      'no journey at all',
      tool.tallyOfPlaywright({ stats: { expected: 0, unexpected: 0, flaky: 0, skipped: 9 } }, 0),
      1,
    ],
    ['no report of the journeys', tool.tallyOfPlaywright(null, 0), 1],
  ])('%s', (_, tally, failed) => {
    expect(tally.failed).toBe(failed);
  });
});

describe('the environment of child processes', () => {
  it('loses what npm adds, but not the way to the registry', () => {
    const from = {
      PATH: '/bin',
      NODE_ENV: 'production',
      npm_lifecycle_event: 'test',
      npm_config_user_agent: 'npm',
      npm_config_registry: 'r',
      NPM_CONFIG_HTTPS_PROXY: 'p',
      npm_config_cafile: 'c',
      npm_config_userconfig: 'u',
    };
    expect(Object.keys(cleanEnvironment(from)).sort()).toEqual([
      'NPM_CONFIG_HTTPS_PROXY',
      'PATH',
      'npm_config_cafile',
      'npm_config_registry',
      'npm_config_userconfig',
    ]);
  });
});
