import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  base: './',
  plugins: [react()],
  build: { target: 'es2022', sourcemap: false, manifest: true },
  worker: { format: 'es' },
  server: { port: 4172 },
  preview: { port: 4173 },
});
