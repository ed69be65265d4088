import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { precache } from './build/precache.ts';
import { servedHeaders } from './build/servedHeaders.ts';

export default defineConfig({
  base: './',
  plugins: [react(), servedHeaders(), precache()],
  build: {
    target: 'es2022',
    sourcemap: false,
    manifest: true,
    rolldownOptions: {
      input: { index: 'index.html', sw: 'worker/serviceWorker.ts' },
      // the service worker's address stays the same, or a browser would never learn of a newer one
      output: { entryFileNames: ({ name }) => (name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js') },
    },
  },
  worker: { format: 'es' },
  server: { port: 4172 },
  preview: { port: 4173 },
});
