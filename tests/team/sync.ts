// Run: pnpm sync [seed [operations]]. Two devices edit apart and meet over a server of CouchDB's protocol on the loopback.
import { partedTeam } from './partedTeam';

const seed = Number(process.argv[2] ?? 20_261_126);
const operations = Number(process.argv[3] ?? 10_000);

const from = performance.now();
const secondsFrom = () => ((performance.now() - from) / 1000).toFixed(0);
console.log(`seed ${seed}, ${operations} operations on two devices and a server on the loopback`);
const parted = await partedTeam(seed, operations, (done) => {
  if (done % 1000 === 0 && done > 0) console.log(`${done} operations, ${secondsFrom()} s`);
});
for (const difference of parted.unequal) console.log(`unequal: ${difference}`);
for (const entry of parted.lost.slice(0, 20)) console.log(`lost: ${JSON.stringify(entry)}`);
console.log(
  `${parted.sites} sites, ${parted.rounds} rounds of replication, ${parted.brokenRounds} of them broken by the line; ` +
    `${parted.versionsWaiting} versions wait for a choice; ${secondsFrom()} s`,
);
console.log(
  `operations ${parted.operations}, acknowledged ${parted.acknowledged}, lost ${parted.lost.length}, unequal ${parted.unequal.length}`,
);
process.exit(parted.lost.length + parted.unequal.length > 0 ? 1 : 0);
