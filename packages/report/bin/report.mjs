#!/usr/bin/env node
// Node 20 runs no TypeScript by itself: tsx loads the command and the packages from their source, without a build.
import { tsImport } from 'tsx/esm/api';

// a reader that has seen enough (`| head`) is no failure
process.stdout.on('error', (error) => {
  if (error.code !== 'EPIPE') throw error;
});

const { report } = await tsImport('../src/report.ts', import.meta.url);
process.exitCode = await report(process.argv.slice(2));
