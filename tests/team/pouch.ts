import http from 'pouchdb-adapter-http';
import memory from 'pouchdb-adapter-memory';
import Core from 'pouchdb-core';
import find from 'pouchdb-find';
import mapreduce from 'pouchdb-mapreduce';
import replication from 'pouchdb-replication';

/** PouchDB 9 in memory, with all that a server of its protocol and a client of one need. */
export const Pouch = [memory, http, mapreduce, replication, find].reduce<typeof Core>(
  (made, plugin) => made.plugin(plugin),
  Core,
);
export type Pouch = Core;
