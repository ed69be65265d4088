/** Where the browser is when nobody says otherwise, and how it starts: software rendering, no traffic of its own. */
export const quietBrowser = {
  executablePath: process.env.FOOTMARK_BROWSER ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
