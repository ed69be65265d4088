import { derivedReport } from '@footmark/exchange';
import {
  derive,
  fitRuns,
  loadProjection,
  MOST_SITE_CHARACTERS,
  needsProjection,
  type OpenFailure,
  openSite,
  type Site,
} from '@footmark/site';
import { en, type Words } from '@footmark/words';
import { readCapped } from './readCapped';

/** What the command writes to, and so what a test can watch. */
export type Output = { write(text: string): unknown };

const USAGE = 'usage: pnpm report FILE   (a site file, or - for standard input)\n';

/** A site file is nearly all one-byte characters, so the limit on its characters serves for its bytes. */
const MOST_BYTES = MOST_SITE_CHARACTERS;

const DONE = 0;
const REFUSED = 1;
const WRONG_USAGE = 2;

/**
 * The report command: JSON of all that follows from the site file on `out`, findings in words on `err`. Gives the exit code: 0
 * done, whatever was found; 1 the file cannot be read or is not a sound site, and nothing is on `out`; 2 wrong usage.
 */
export async function report(
  args: readonly string[],
  out: Output = process.stdout,
  err: Output = process.stderr,
): Promise<number> {
  const [file] = args;
  if (file === undefined || args.length > 1 || (file.startsWith('-') && file !== '-')) {
    err.write(USAGE);
    return WRONG_USAGE;
  }
  const words = en;
  const read = await readCapped(file, MOST_BYTES);
  if (!read.ok) {
    err.write(refusal(file, read, words));
    return REFUSED;
  }
  const opened = openSite(read.text);
  if (!opened.ok) {
    err.write(failureText(file, opened.failure, words));
    return REFUSED;
  }
  if (needsProjection(opened.site)) await loadProjection();
  printReport(opened.site, words, out, err);
  return DONE;
}

function printReport(site: Site, words: Words, out: Output, err: Output): void {
  const today = new Date().toISOString().slice(0, 'yyyy-mm-dd'.length);
  const derived = derive(site);
  out.write(
    `${JSON.stringify(derivedReport(site, derived, fitRuns(site, derived), words, today), null, 2)}\n`,
  );
  for (const finding of derived.findings) {
    const { text, cure } = words.findingText(finding, site);
    err.write(`${words.findingSeverityName(finding.severity)}: ${text}\n  ${cure}\n`);
  }
}

type Refused = Exclude<Awaited<ReturnType<typeof readCapped>>, { ok: true }>;

function refusal(file: string, refused: Refused, words: Words): string {
  switch (refused.code) {
    case 'too-large':
      return failureText(file, { code: 'too-large', characters: refused.bytes, most: MOST_BYTES }, words);
    case 'unreadable':
      return `${file}: The file cannot be read: ${refused.why}.\n`;
    case 'not-text':
      return failureText(file, { code: 'not-json', position: null, near: '' }, words);
  }
}

function failureText(file: string, failure: OpenFailure, words: Words): string {
  const { text, cure, problems } = words.fileProblemText(failure);
  return [`${file}: ${text}`, ...problems, cure].join('\n  ').concat('\n');
}
