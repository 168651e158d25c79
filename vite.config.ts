import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
// @ts-expect-error plain script without types
import { licenses } from './scripts/viteLicenses.mjs';
// @ts-expect-error plain script without types
import { offline, strictPolicy } from './scripts/viteOffline.mjs';

const shipped = licenses({ ownText: 'LICENSE', fonts: 'public/fonts' });

export default defineConfig({
  base: './',
  plugins: [react(), strictPolicy(), shipped.inPage, offline()],
  worker: { format: 'es', plugins: () => [shipped.inWorkers] },
  build: { chunkSizeWarningLimit: 1100, target: 'es2022' },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**', 'node_modules/**'],
    testTimeout: 240_000,
    maxWorkers: 2,
  },
});
