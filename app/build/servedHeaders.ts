import type { Plugin } from 'vite';
import { cacheControl, HEADERS, PAGE_POLICY } from './policy.ts';

/** Writes the policy into the built page, and serves the built app with the headers that a server of it should send. */
export function servedHeaders(): Plugin {
  return {
    name: 'footmark-served-headers',
    // the page of `vite dev` has scripts in it
    transformIndexHtml: {
      order: 'post',
      handler: (_, { bundle }) =>
        bundle === undefined
          ? []
          : [
              {
                tag: 'meta',
                attrs: { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY },
                injectTo: 'head-prepend',
              },
            ],
    },
    configurePreviewServer: ({ middlewares }) => {
      middlewares.use((request, response, next) => {
        for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
        response.setHeader(
          'Cache-Control',
          cacheControl(new URL(request.url ?? '/', 'http://localhost').pathname),
        );
        next();
      });
    },
  };
}
