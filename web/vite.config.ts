import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { exampleSites } from './example_sites_plugin';
import { handbookHelp } from './handbook_plugin';
import { screensPreload } from './screens_preload_plugin';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const builtFiles = [
  'engine.js',
  'engine.wasm',
  'vision.js',
  'vision.wasm',
  'outline-network.weights',
];

/** The screens are nothing without the engine, so a build without it stops. */
function engineIsBuilt(): Plugin {
  return {
    name: 'proofstone-engine-is-built',
    apply: 'build',
    buildStart() {
      for (const file of builtFiles) {
        if (!existsSync(here(`public/engine/${file}`))) {
          this.error(
            `web/public/engine/${file} is missing: build the engine first (cmake --preset wasm && ninja -C build/wasm).`,
          );
        }
      }
    },
  };
}

export default defineConfig({
  base: './',
  build: { target: 'es2022', assetsInlineLimit: 0 },
  worker: { format: 'es' },
  plugins: [
    engineIsBuilt(),
    exampleSites(here('../examples')),
    handbookHelp(here('../docs')),
    screensPreload('src/start.tsx'),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        id: './',
        name: 'Proofstone',
        short_name: 'Proofstone',
        description:
          'Is this rock, here, good enough? Findings for rock protection of streams, outfalls and shores.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f6f4f0',
        theme_color: '#f6f4f0',
        icons: [
          { src: 'icons/proofstone-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/proofstone-512.png', sizes: '512x512', type: 'image/png' },
          {
            src: 'icons/proofstone-maskable-512.png',
            sizes: '512x512',
            type: 'image/png',
            purpose: 'maskable',
          },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,wasm,json,csv,svg,png,jpg,webmanifest,weights}'],
        maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        // The first visit too: what is loaded later is there when the signal is gone meanwhile.
        clientsClaim: true,
      },
    }),
  ],
});
