import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import express from 'express';
import expressPouch from 'express-pouchdb';
import { Pouch } from './pouch';

export type TeamServer = {
  /** Address of the one database, without user and password. */
  readonly url: string;
  readonly database: Pouch;
  /** Whose requests are answered; the others get 401. */
  readonly user: string;
  readonly password: string;
  /** Cuts the line to everybody, or mends it. */
  cut(isCut: boolean): void;
  close(): Promise<void>;
};

let count = 0;

/** A server of CouchDB's protocol on the loopback, in memory: express-pouchdb 4.2 on PouchDB 9. It lets one user in, and any origin. */
export async function startTeamServer(port = 0): Promise<TeamServer> {
  count += 1;
  const name = `team-${count}`;
  const [user, password] = ['crew', 'p:ss wörd'];
  const right = `Basic ${Buffer.from(`${user}:${password}`, 'utf8').toString('base64')}`;
  const Memory = Pouch.defaults({ adapter: 'memory' });
  const app = express();
  let isCut = false;
  app.use((request, response, next) => {
    if (isCut) {
      request.socket.destroy();
      return;
    }
    response.setHeader('Access-Control-Allow-Origin', request.headers.origin ?? '*');
    response.setHeader('Access-Control-Allow-Headers', 'authorization, content-type, accept');
    response.setHeader('Access-Control-Allow-Methods', 'GET, PUT, POST, HEAD, DELETE');
    if (request.method === 'OPTIONS' || request.headers.authorization !== right) {
      response.statusCode = request.method === 'OPTIONS' ? 204 : 401;
      response.setHeader('Content-Type', 'application/json');
      response.end(request.method === 'OPTIONS' ? undefined : '{"error":"unauthorized"}');
    } else next();
  });
  app.use(expressPouch(Memory, { mode: 'minimumForPouchDB', inMemoryConfig: true }));
  // the server knows the databases that are made once it is there
  const database = new Memory(name);
  await database.info();
  const server = createServer(app);
  await new Promise<void>((listening) => server.listen(port, '127.0.0.1', listening));
  // it listens on a port: its address is not a pipe's name
  const { port: given } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${given}/${name}`,
    database,
    user,
    password,
    cut: (now) => {
      isCut = now;
      if (now) server.closeAllConnections();
    },
    close: () => closed(server),
  };
}

function closed(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}
