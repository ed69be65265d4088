import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ROOT } from './repository';

type Advisory = Readonly<{ severity: string }>;
type AuditTool = Readonly<{
  advisoriesIn: (text: string) => readonly Advisory[] | null;
  graveAmong: (advisories: readonly Advisory[]) => readonly Advisory[];
}>;

// The tools are plain scripts without declarations; this is the shape that their comments state.
const load = (tool: string): Promise<unknown> =>
  import(/* @vite-ignore */ pathToFileURL(join(ROOT, '.tools', tool)).href);
const { advisoriesIn, graveAmong } = (await load('audit.mjs')) as AuditTool;

describe('the audit', () => {
  it('stops at what is grave, and tells the rest', () => {
    const told = advisoriesIn(
      '{"advisories":{"1":{"severity":"low"},"2":{"severity":"critical"}},"metadata":{}}',
    );
    expect(told).toHaveLength(2);
    expect(graveAmong(told ?? [])).toEqual([{ severity: 'critical' }]);
  });

  it('knows an answer without advisories from no answer', () => {
    expect(advisoriesIn('{"advisories":{},"metadata":{}}')).toEqual([]);
    for (const none of ['', 'ERR_PNPM_AUDIT_BAD_RESPONSE', '{"error":{"code":"x"}}', 'null', '[]'])
      expect(advisoriesIn(none)).toBeNull();
  });
});
