import type { Finding } from '@footmark/site';

/** How a pipe falls stands on its card with what the codes ask of it. */
const ELSEWHERE: readonly Finding['code'][] = ['slope-too-flat', 'slope-against-flow', 'slope-unsure'];

/** What is doubtful about a pipe, but for what its card says already. */
export function aboutPath(findings: readonly Finding[], path: string): readonly Finding[] {
  return findings.filter(({ at, code }) => at.kind === 'path' && at.id === path && !ELSEWHERE.includes(code));
}
