// What a child process may inherit.

/** Settings of npm that say how to reach the registry; every other one is npm talking to itself. */
const KEPT = new Set([
  'npm_config_registry',
  'npm_config_proxy',
  'npm_config_https_proxy',
  'npm_config_noproxy',
  'npm_config_cafile',
  'npm_config_userconfig',
]);

/**
 * The environment without what `npm start` adds to it: pnpm and a nested npm would take it for their own settings.
 * NODE_ENV goes too, or `production` would leave out the tools that build the app.
 *
 * @param {NodeJS.ProcessEnv} [from]
 * @returns {NodeJS.ProcessEnv}
 */
export function cleanEnvironment(from = process.env) {
  return Object.fromEntries(
    Object.entries(from).filter(([name]) => {
      const key = name.toLowerCase();
      return key !== 'node_env' && (!key.startsWith('npm_') || KEPT.has(key));
    }),
  );
}
