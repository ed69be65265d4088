import { cpus } from 'node:os';
import type { Reporter, TestCase, TestError, TestResult } from '@playwright/test/reporter';
import type { Counts } from './Walk';

/**
 * Seconds that a practised hand takes to decide, point and press, and to strike a key as one who types now and then (the keystroke-level
 * model: Card, Moran, Newell, Communications of the ACM 23(7), 1980: M 1.35, P 1.1, B twice 0.1, K 0.28; from memory; for a mouse, not gloves).
 */
const ACTION_S = 1.35 + 1.1 + 0.2;
const KEY_S = 0.28;

/** Prints what each counted journey took, and where its pictures are. */
// biome-ignore lint/style/noDefaultExport: Playwright takes a reporter so
export default class CountedTable implements Reporter {
  private readonly rows: string[] = [];

  onTestEnd(test: TestCase, result: TestResult): void {
    const title = test.title.padEnd(62);
    const size = (test.parent.project()?.name ?? '').padEnd(7);
    const body = result.attachments.find(({ name }) => name === 'counts')?.body;
    if (result.status !== 'passed' || body === undefined) {
      this.rows.push(`${title} ${size} ${result.status}: ${result.error?.message ?? ''}`);
      return;
    }
    const { actions, keys, seconds }: Counts = JSON.parse(body.toString());
    const byHand = (actions * ACTION_S + keys * KEY_S) / 60;
    this.rows.push(
      `${title} ${size} ${String(actions).padStart(7)} ${String(keys).padStart(6)} ${seconds.toFixed(1).padStart(9)} ${byHand.toFixed(1).padStart(12)}`,
    );
  }

  onError(error: TestError): void {
    console.error(error.message ?? error.value);
  }

  onEnd(): void {
    const [cpu] = cpus();
    console.log(`\n${new Date().toISOString().slice(0, 10)}, ${cpus().length} × ${cpu?.model}`);
    console.log(`${'journey'.padEnd(62)} size    actions   keys machine s by hand, min`);
    for (const row of this.rows) console.log(row);
    console.log('Pictures: e2e/node_modules/.counted');
  }

  printsToStdio(): boolean {
    return true;
  }
}
