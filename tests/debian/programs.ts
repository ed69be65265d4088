import { spawnSync } from 'node:child_process';

/** Whether a program of Debian's is on this machine. */
export function isThere(program: string): boolean {
  return spawnSync(program, ['--version']).error === undefined;
}

/** What a program prints, line by line, for lines of input. */
export function linesFrom(
  program: string,
  args: readonly string[],
  input: readonly string[],
): readonly string[] {
  const { stdout, status, stderr } = spawnSync(program, [...args], {
    input: `${input.join('\n')}\n`,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${stderr}`);
  return stdout.trimEnd().split('\n');
}
