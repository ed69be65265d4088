// A port that nobody listens on.
import { createServer } from 'node:net';

const FIRST = 4173;
const TRIES = 100;
/** A server on any of these would be met by a browser that asks for `localhost`. */
const ADDRESSES = ['127.0.0.1', '::1', '0.0.0.0'];

/** @param {number} port @param {string} host @returns {Promise<boolean>} */
function freeAt(port, host) {
  return new Promise((resolve) => {
    const server = createServer();
    // A machine without IPv6 has no ::1; that is no reason against the port.
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) =>
      resolve(error.code === 'EADDRNOTAVAIL' || error.code === 'EAFNOSUPPORT'),
    );
    server.listen({ port, host, exclusive: true }, () => server.close(() => resolve(true)));
  });
}

/** @param {number} port */
async function isFree(port) {
  for (const address of ADDRESSES) if (!(await freeAt(port, address))) return false;
  return true;
}

/**
 * The port to serve on: the wanted one or an error, and without a wish the first free one from 4173.
 *
 * @param {string | undefined} wanted what FOOTMARK_PORT says
 */
export async function choosePort(wanted) {
  if (wanted !== undefined && wanted !== '') {
    const port = Number(wanted);
    if (!Number.isInteger(port) || port < 1 || port > 65535)
      throw new Error(`FOOTMARK_PORT is "${wanted}"; it takes a whole number from 1 to 65535.`);
    if (!(await isFree(port))) throw new Error(`Port ${port} (FOOTMARK_PORT) is taken or not allowed.`);
    return port;
  }
  for (let port = FIRST; port < FIRST + TRIES; port += 1) if (await isFree(port)) return port;
  throw new Error(`No free port from ${FIRST} to ${FIRST + TRIES - 1}; set FOOTMARK_PORT.`);
}
