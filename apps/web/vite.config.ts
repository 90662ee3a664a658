import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Everything is served from one origin; nothing is fetched from anywhere else, ever. */
export default defineConfig({
  root: import.meta.dirname,
  base: '/',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and drawings stay files: the content security policy has no place for data addresses in styles.
    assetsInlineLimit: 0,
    sourcemap: false,
    reportCompressedSize: false,
  },
});
