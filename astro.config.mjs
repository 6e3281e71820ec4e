import node from '@astrojs/node';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

export default defineConfig({
  site: 'https://ninepin.example',
  output: 'static',
  adapter: node({ mode: 'standalone' }),
  integrations: [preact()],
  // Outside node_modules, which `npm ci` empties.
  cacheDir: './.cache/astro',
  devToolbar: { enabled: false },
});
