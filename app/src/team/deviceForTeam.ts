import { canonicalText } from '@footmark/merge';
import { openSiteValue } from '@footmark/site';
import type { Device } from '@footmark/team';
import type { DeviceDatabase } from '../storage/database';
import { tellSiteNews } from '../storage/siteNews';
import { putSite, SITE_STORES } from '../storage/writeSite';

/** The device's database as the exchange with the team sees it. `sharesAll`: every site goes to the team. */
export function deviceForTeam(db: DeviceDatabase, sharesAll: () => boolean): Device {
  return {
    async read(id) {
      const tx = db.transaction(['sites', 'entries', 'stamps']);
      const [stored, entry, stamps] = await Promise.all([
        tx.objectStore('sites').get(id),
        tx.objectStore('entries').get(id),
        tx.objectStore('stamps').get(id),
        tx.done,
      ]);
      if (stored === undefined || entry === undefined) return null;
      const opened = openSiteValue(stored.site);
      return {
        state: opened.ok
          ? { site: opened.site, others: stored.others ?? [], binnedAt: entry.deletedAt ?? null }
          : null,
        seq: entry.seq ?? 0,
        stamps: stamps === undefined ? null : { by: stamps.by, last: stamps.last },
        shared: entry.team === true || sharesAll(),
      };
    },

    async keep(id, { stamps, seq }) {
      const tx = db.transaction(['entries', 'stamps'], 'readwrite');
      const entry = await tx.objectStore('entries').get(id);
      const isAsRead = entry !== undefined && (entry.seq ?? 0) === seq;
      if (isAsRead) await tx.objectStore('stamps').put({ id, ...stamps });
      await tx.done;
      return isAsRead;
    },

    async write(id, { state, stamps, seq }) {
      // what is lost with a power failure is exchanged again: the flush to the disk need not be waited for
      const tx = db.transaction(SITE_STORES, 'readwrite');
      const [stored, entry] = await Promise.all([
        tx.objectStore('sites').get(id),
        tx.objectStore('entries').get(id),
      ]);
      if ((entry === undefined ? null : (entry.seq ?? 0)) !== seq) {
        await tx.done;
        return false;
      }
      const isNew =
        stored === undefined ||
        entry === undefined ||
        canonicalText([stored.site, stored.others ?? [], entry.deletedAt ?? null]) !==
          canonicalText([state.site, state.others, state.binnedAt]);
      const written = (seq ?? 0) + (isNew ? 1 : 0);
      const facts = {
        team: true,
        exchangedSeq: written,
        ...(state.binnedAt === null ? {} : { deletedAt: state.binnedAt }),
      } as const;
      if (isNew) {
        const { site, others } = state;
        await putSite(tx, { site, others, now: Date.now(), entry, facts });
      } else await tx.objectStore('entries').put({ ...entry, ...facts });
      await tx.objectStore('stamps').put({ id, ...stamps });
      await tx.done;
      if (isNew || entry?.team !== true) tellSiteNews({ id, seq: written });
      return true;
    },
  };
}
