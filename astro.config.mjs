import node from '@astrojs/node';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { bundledScripts } from './src/ui/build/bundledScripts.ts';
import { folderOfHost, siteAndBase } from './src/ui/build/folder.ts';
import { islandScripts } from './src/ui/build/islandScripts.ts';
import { searchIndex } from './src/ui/search/integration.ts';

export default defineConfig({
  // From the shop's address in content/shop.yaml: its host, and the folder that the shop lies in.
  ...siteAndBase(),
  output: 'static',
  // Only /bench and /desk run on demand; everything else is a file.
  adapter: node({ mode: 'standalone' }),
  integrations: [preact(), islandScripts(), bundledScripts(), searchIndex(), folderOfHost()],
  // Astro's Preact client can hand signals to islands; none of these has any, and their code would be built along.
  vite: {
    resolve: { alias: { '@preact/signals': new URL('.config/noSignals.ts', import.meta.url).pathname } },
  },
  // Outside node_modules, which `npm ci` empties.
  cacheDir: './.cache/astro',
  experimental: {
    // A page whose key (src/ui/build) is the last build's is taken over from it.
    incrementalBuild: true,
  },
  devToolbar: { enabled: false },
  // The guides hold no code, and a highlighter's inline styles would break the policy below.
  markdown: { syntaxHighlight: false },
  // The bench answers on this machine only, in development too.
  server: { host: '127.0.0.1' },
  security: {
    // src/middleware.ts asks more, and also behind a proxy that ends TLS, where Astro sees another origin.
    checkOrigin: false,
    // No inline script or style runs unless its hash is known at build.
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self' mailto:",
      ],
      // The search index is read by WebAssembly.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
});
