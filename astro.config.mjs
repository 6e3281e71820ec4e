import node from '@astrojs/node';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { bundledScripts } from './src/ui/build/bundledScripts.ts';
import { folderOfHost, siteAndBase } from './src/ui/build/folder.ts';
import { islandScripts } from './src/ui/build/islandScripts.ts';
import { scriptFiles } from './src/ui/build/scriptFiles.ts';
import { READ_FROM } from './src/catalogue/released/place.ts';
import { keepRenderer } from './src/release/keepRenderer.ts';
import { reloadOnContent } from './src/release/reloadOnContent.ts';

/** The folder of the release that is being made; `npm run build` says which. */
const making = process.env[READ_FROM];
if (making === undefined && process.argv.includes('build')) {
  throw new Error(
    `A shop is built by \`npm run build\`, which checks the content first and names the folder.`,
  );
}

export default defineConfig({
  // From the shop's address in content/shop.yaml: its host, and the folder that the shop lies in.
  ...siteAndBase(),
  output: 'static',
  outDir: making ?? 'dist',
  // Only /bench and /desk run on demand; everything else is a file.
  adapter: node({ mode: 'standalone' }),
  integrations: [
    preact(),
    islandScripts(),
    scriptFiles(),
    bundledScripts(),
    folderOfHost(),
    keepRenderer(),
    reloadOnContent(),
  ],
  vite: {
    // The folder is fresh, but for the catalogue.
    build: { emptyOutDir: false },
  },
  // Outside node_modules, which `npm ci` empties.
  cacheDir: './.cache/astro',
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
