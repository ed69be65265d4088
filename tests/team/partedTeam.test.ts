import { describe, expect, it } from 'vitest';
import { partedTeam } from './partedTeam';

const PATIENCE_MS = 120_000;

// the long run is `pnpm sync`
describe('two devices that edit apart and meet over a server of CouchDB’s protocol', () => {
  it(
    'have the same in the end, on both and on the server, and all that was acknowledged',
    async () => {
      const parted = await partedTeam(7, 250);
      expect(parted.unequal).toEqual([]);
      expect(parted.lost).toEqual([]);
      expect(parted.acknowledged).toBeGreaterThan(150);
      expect(parted.brokenRounds).toBeGreaterThan(0);
    },
    PATIENCE_MS,
  );
});
