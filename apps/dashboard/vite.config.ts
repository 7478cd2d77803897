import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const root = fileURLToPath(new URL('.', import.meta.url));

// The list replaces Vite's own conditions, so these are named too.
const conditions = ['surae-source', 'module', 'browser', 'development|production'];

export default defineConfig(({ command }) => {
  // What is built is what people use, whatever the shell that builds it says of itself. Under NODE_ENV=test or development
  // the page would not register the worker that keeps it for days without a network.
  if (command === 'build') process.env.NODE_ENV = 'production';
  return {
    root,
    base: './',
    resolve: { conditions },
    build: { outDir: 'dist/site', emptyOutDir: true, target: 'es2023', sourcemap: false },
    worker: { format: 'es' },
    plugins: [
      VitePWA({
        registerType: 'prompt',
        injectRegister: null,
        manifest: {
          name: 'Surae',
          short_name: 'Surae',
          description: 'Calf strength testing',
          display: 'standalone',
          background_color: '#F6F3EC',
          theme_color: '#F6F3EC',
          icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml' }],
        },
        workbox: { globPatterns: ['**/*.{html,js,css,svg,webmanifest}'] },
      }),
    ],
  };
});
