/** What a page may do, as Content-Security-Policy has it: everything that is not listed is refused. */
const DIRECTIVES: Readonly<Record<string, readonly string[]>> = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  // two rules that react-aria writes into the page itself, by what they hash to; styles of single elements go by the DOM, not by text
  'style-src': [
    "'self'",
    "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='",
    "'sha256-gYiS/BvZvRcK27JIXTuwhZ3hs2+VJ1X+2gUlE+farlg='",
  ],
  'img-src': ["'self'", 'blob:', 'data:'],
  'font-src': ["'self'"],
  'manifest-src': ["'self'"],
  'worker-src': ["'self'", 'blob:'],
  // a team's own database, at whatever address they type: by https, or on the machine itself
  'connect-src': ["'self'", 'https:', 'http://localhost:*', 'http://127.0.0.1:*'],
  'object-src': ["'none'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
};

const text = (directives: Readonly<Record<string, readonly string[]>>) =>
  Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources.join(' ')}`)
    .join('; ');

/** What `style-src` lets be written into the page besides its own files. */
export const STYLE_SOURCES: readonly string[] = DIRECTIVES['style-src'] ?? [];

/** For the page itself, which holds it wherever it is served from. */
export const PAGE_POLICY = text(DIRECTIVES);

/** Headers that the app is served with: the page's policy and what can only be said in a header. */
export const HEADERS: Readonly<Record<string, string>> = {
  // whose frame a page may stand in is heard in a header only
  'Content-Security-Policy': text({ ...DIRECTIVES, 'frame-ancestors': ["'none'"] }),
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(self), geolocation=(self), microphone=(), payment=(), usb=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

/** Files whose names change with what is in them are kept for a year; all others are asked for anew, and mostly not sent again. */
export function cacheControl(path: string): string {
  return path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
}
