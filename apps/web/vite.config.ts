import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Everything is served from one origin; nothing is fetched from anywhere else, ever. */
export default defineConfig({
  root: import.meta.dirname,
  base: '/',
  plugins: [
    react(),
    onlyEnglishOfTheWidgets(),
    VitePWA({
      // A new version waits until the owner takes it: shell/versions.ts registers and asks.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        id: '/',
        name: 'Waymend',
        short_name: 'Waymend',
        description:
          'Works out which tools, spares and supplies to carry so that a loaded 4x4 gets home unaided.',
        lang: 'en-GB',
        start_url: '/',
        scope: '/',
        display: 'standalone',
        // The splash screen is dark: a white flash costs eyes that are used to the night twenty minutes.
        background_color: '#14181A',
        theme_color: '#14181A',
        icons: [
          { src: '/icons/mark-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: '/icons/mark-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
          { src: '/icons/mark-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      workbox: {
        // All of it, the solver and the demo too: after the first visit nothing needs a signal.
        globPatterns: ['**/*.{html,js,css,svg,png,woff2,wasm,yaml,webmanifest}'],
        maximumFileSizeToCacheInBytes: 8e6,
        navigateFallback: '/index.html',
        cleanupOutdatedCaches: true,
        inlineWorkboxRuntime: true,
        sourcemap: false,
      },
    }),
  ],
  worker: { format: 'es' },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and drawings stay files: the content security policy has no place for data addresses in styles.
    assetsInlineLimit: 0,
    sourcemap: false,
    reportCompressedSize: false,
    // For scripts/script-size.mjs: which script leads to which.
    manifest: true,
  },
});

/** The widgets bring their own few words in some thirty languages; the planner speaks one, and a phone reads no others. */
function onlyEnglishOfTheWidgets(): Plugin {
  const other = /\/react-(aria|stately|aria-components)\/.*\/intl\/.*\/(?!en-)[a-z]{2}-[A-Z]{2}\.m?js$/;
  return {
    name: 'only-english-of-the-widgets',
    load: (id) => (other.test(id) ? 'export default {};' : null),
  };
}
