import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const root = fileURLToPath(new URL('.', import.meta.url));

// The list replaces Vite's own conditions, so these are named too.
const conditions = ['surae-source', 'module', 'browser', 'development|production'];

/**
 * What the page may load and run: its own files and nothing else. Deriving a key from a passphrase is WebAssembly, which has a
 * permission of its own that allows no other code. Styles are adopted sheets and properties set by script; there is no style
 * or script in the page itself.
 */
const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Writes the policy into the built page, so that it holds whatever serves it. While it is developed, the server adds scripts of its own. */
const policyInPage: Plugin = {
  name: 'policy-in-page',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
      injectTo: 'head-prepend',
    },
  ],
};

/**
 * The page begins with its language and only then loads the rest, because words are read while modules are loaded. The rest is named
 * in the page, so that all of it is fetched at once.
 */
const restNamedInPage: Plugin = {
  name: 'rest-named-in-page',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (html, { bundle = {} }) => {
      const named = new Set<string>();
      const name = (file: string): void => {
        const chunk = bundle[file];
        if (chunk?.type !== 'chunk' || named.has(file)) return;
        named.add(file);
        chunk.imports.forEach(name);
      };
      for (const chunk of Object.values(bundle)) {
        if (chunk.type === 'chunk' && chunk.facadeModuleId?.endsWith('/dashboard/src/main.ts')) name(chunk.fileName);
      }
      return [...named]
        .filter((file) => !html.includes(file))
        .map((file) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        }));
    },
  },
};

/** What sets the language before anything else is loaded; none of it reads a word. */
const beforeWords =
  /\/dashboard\/src\/(?:language\/|words\/locale\.ts)|\/@lit\/localize\/|\/sentences\/wording\.ts|preload-helper/;

/**
 * What the first page needs lies in one file, and not in one for each way in which its modules are shared with later pages: asking for a
 * small file costs more than what is in it, and one file is packed better. What sets the language lies apart, because it runs first.
 */
const startTogether = {
  // both are beginnings, so that what they need is known to be needed at once
  input: { index: `${root}index.html`, main: `${root}src/main.ts` },
  output: {
    codeSplitting: {
      groups: [
        { name: 'language', test: beforeWords, priority: 2 },
        { name: 'start', tags: ['$initial' as const], minShareCount: 2, priority: 1 },
      ],
    },
  },
};

export default defineConfig(({ command }) => {
  // What is built is what people use, whatever the shell that builds it says of itself. Under NODE_ENV=test or development
  // the page would not register the worker that keeps it for days without a network.
  if (command === 'build') process.env.NODE_ENV = 'production';
  return {
    root,
    base: './',
    resolve: { conditions },
    build: {
      outDir: 'dist/site',
      emptyOutDir: true,
      target: 'es2023',
      sourcemap: false,
      rolldownOptions: startTogether,
    },
    worker: { format: 'es' },
    preview: {
      headers: {
        // a page of another site must not show this one in a frame: only a header can say so
        'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
        'Referrer-Policy': 'no-referrer',
        'X-Content-Type-Options': 'nosniff',
      },
    },
    plugins: [
      policyInPage,
      restNamedInPage,
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
        workbox: { globPatterns: ['**/*.{html,js,css,svg,webmanifest,txt}'] },
      }),
    ],
  };
});
