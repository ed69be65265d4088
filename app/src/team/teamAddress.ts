/** The address of a database, and whom it was written for. */
export type TeamAddress =
  | { readonly ok: true; readonly url: string; readonly user: string; readonly password: string }
  | { readonly ok: false; readonly code: 'not-an-address' | 'not-encrypted' | 'no-database' };

const LOOPBACK = /^(localhost|127\.0\.0\.1)$/; // as the policy of the page lets them be spoken to

/**
 * Reads the address that somebody typed. User and password are taken out of it. Without TLS only this machine itself is spoken to: a
 * password would be read on the way.
 */
export function readTeamAddress(typed: string): TeamAddress {
  const text = typed.trim();
  const full = /^[a-z]+:\/\//i.test(text) ? text : `https://${text}`;
  if (text === '' || !URL.canParse(full)) return { ok: false, code: 'not-an-address' };
  const url = new URL(full);
  if (url.protocol !== 'https:' && url.protocol !== 'http:') return { ok: false, code: 'not-an-address' };
  if (url.protocol === 'http:' && !LOOPBACK.test(url.hostname)) return { ok: false, code: 'not-encrypted' };
  const path = url.pathname.replace(/\/+$/, '');
  if (path === '') return { ok: false, code: 'no-database' };
  const user = decodeURIComponent(url.username);
  const password = decodeURIComponent(url.password);
  return { ok: true, url: `${url.origin}${path}`, user, password };
}

/** The header that lets one in (HTTP Basic, RFC 7617, the text in UTF-8). */
export function rightOf({ user, password }: { readonly user: string; readonly password: string }): string {
  const bytes = new TextEncoder().encode(`${user}:${password}`);
  return `Basic ${btoa(String.fromCharCode(...bytes))}`;
}
