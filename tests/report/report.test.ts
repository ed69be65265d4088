import { spawnSync } from 'node:child_process';
import {
  closeSync,
  ftruncateSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { DerivedReport } from '@footmark/exchange';
import type { Site } from '@footmark/site';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const COMMAND = join(ROOT, 'node_modules/.bin/report');
const SAMPLE = 'packages/site/samples/rear-alley.json';

/** Starting Node with a TypeScript loader takes a second or two, and this machine may be busy. */
const PATIENCE_MS = 30_000;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'footmark-report-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Runs the real command from the root of the workspace, as `pnpm report` does. */
function run(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(COMMAND, args, {
    cwd: ROOT,
    input,
    encoding: 'utf8',
    maxBuffer: 2 ** 27,
  });
  return { status, stdout, stderr };
}

function written(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

/** The sample site with one thing spoilt, as a file. */
function spoilt(name: string, spoil: (site: Site) => void): string {
  const site = JSON.parse(readFileSync(join(ROOT, SAMPLE), 'utf8')) as Site; // a sound sample; what follows spoils it
  spoil(site);
  return written(name, JSON.stringify(site, null, 2));
}

describe('a sound site', { timeout: PATIENCE_MS }, () => {
  it('becomes JSON and nothing else on standard output, findings in words on standard error', () => {
    const { status, stdout, stderr } = run([SAMPLE]);
    expect(status).toBe(0);
    const report = JSON.parse(stdout) as DerivedReport; // its shape is what this test looks at
    expect(report.report).toBe('footmark-report');
    expect(report.site.name).toBe('Rear-alley lateral');
    expect(report.marks.map((m) => m.label)).toContain('A8');
    expect(stdout.startsWith('{\n  "report"')).toBe(true);
    for (const finding of report.findings) expect(stderr).toContain(`${finding.text}\n  ${finding.cure}`);
    expect(stderr.match(/^(Error|Warning|Note): /gm)?.length).toBe(report.findings.length);
  });

  it('comes through standard input just the same', () => {
    const fromInput = run(['-'], readFileSync(join(ROOT, SAMPLE), 'utf8'));
    expect(fromInput.status).toBe(0);
    expect(fromInput.stdout).toBe(run([SAMPLE]).stdout);
  });

  it('with a leg of no length is reported, with an error that says which', () => {
    const file = spoilt('zero-leg.json', (site) => {
      const [path] = site.paths;
      const first = path?.vertices[0];
      if (path === undefined || first === undefined) throw new Error('the sample has a path');
      path.vertices.splice(1, 0, { id: 'again', spot: { by: 'at', point: { of: path.id, at: first.id } } });
    });
    const { status, stdout, stderr } = run([file]);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      findings: expect.arrayContaining([expect.objectContaining({ code: 'path-leg-has-no-length' })]),
    });
    expect(stderr).toMatch(/^Error: Leg 1 of Lateral has no length/m);
    const [lastError, firstOther] = [stderr.lastIndexOf('\nError: '), stderr.search(/^(Warning|Note): /m)];
    expect(lastError).toBeLessThan(firstOther);
  });
});

describe('a file that is not a sound site', { timeout: PATIENCE_MS }, () => {
  const refused = (file: string) => {
    const { status, stdout, stderr } = run([file]);
    expect(status).toBe(1);
    expect(stdout).toBe('');
    expect(stderr).not.toMatch(/\n\s+at /); // no stack of ours
    return stderr;
  };

  it('not JSON', () => {
    expect(refused(written('cut.json', '{"format": "footmark-site",'))).toMatch(
      /not JSON(.|\n)*character 28/,
    );
  });

  it('JSON of something else', () => {
    expect(refused(written('other.json', '{"type": "FeatureCollection"}'))).toContain('it is not a site.');
  });

  it('of a newer version', () => {
    const file = spoilt('newer.json', (site) => Object.assign(site, { version: 99 }));
    expect(refused(file)).toContain('version 99, and this program knows up to version');
  });

  it('with an unknown field: the path to it', () => {
    const file = spoilt('unknown.json', (site) => Object.assign(site.features[3] ?? {}, { colour: 'red' }));
    expect(refused(file)).toContain('\n  features[3].colour: ');
  });

  it('with NaN and Infinity: the path to each and a hint', () => {
    const file = spoilt('nan.json', (site) => {
      Object.assign(site.tape, { length: 'LENGTH' });
      Object.assign(site.paths[0]?.stretches[0] ?? {}, { diameter: 'DIAMETER' });
      site.note = 'NaN in a note is a word like any other';
    });
    const text = readFileSync(file, 'utf8').replace('"LENGTH"', 'NaN').replace('"DIAMETER"', '-Infinity');
    const stderr = refused(written('nan.json', text));
    expect(stderr).toContain('\n  tape.length: this value does not fit (NaN)');
    expect(stderr).toContain('\n  paths[0].stretches[0].diameter: this value does not fit (-Infinity)');
    expect(stderr).toContain('NaN and Infinity are not numbers that can be measured');
    expect(stderr).toContain('2 places');
  });

  it('with a path of one vertex: the path to it', () => {
    const file = spoilt('one-vertex.json', (site) => {
      site.paths[0]?.vertices.splice(1);
    });
    expect(refused(file)).toContain('\n  paths[0].vertices: ');
  });

  it('of 50 MB: refused by its size, without being read', () => {
    const file = join(folder, 'large.json');
    const handle = openSync(file, 'w');
    ftruncateSync(handle, 50_000_000);
    closeSync(handle);
    const started = performance.now();
    const { status, stderr } = run(['packages/none.json']);
    const idle = performance.now() - started;
    expect({ status, stderr }).toMatchObject({ status: 1 });
    const before = performance.now();
    expect(refused(file)).toContain('too large for a site: 50.0 MB');
    expect(performance.now() - before).toBeLessThan(3 * idle + 1000);
  });

  it('that is not text', () => {
    const file = join(folder, 'bytes.json');
    writeFileSync(file, Buffer.from([0x7b, 0xff, 0xfe, 0x7d]));
    expect(refused(file)).toContain('not JSON');
  });

  it('that is not there, and a folder', () => {
    expect(refused(join(folder, 'none.json'))).toContain('there is no such file');
    expect(refused(folder)).toContain('it is a folder');
  });

  it('too large on standard input: refused as soon as it is', () => {
    const { status, stdout, stderr } = run(['-'], ' '.repeat(21_000_000));
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toContain('too large for a site');
  });
});

describe('wrong usage', { timeout: PATIENCE_MS }, () => {
  it.each([[[]], [[SAMPLE, SAMPLE]], [['--help']]])('%j gives the usage and 2', (args) => {
    const { status, stdout, stderr } = run(args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^usage: .*FILE/);
  });
});
