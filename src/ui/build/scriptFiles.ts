/**
 * How the browser's code is cut into files. Left alone it falls into a file for every set of pages that share
 * something, and thirty small files compress worse than a dozen by what they are for: the island's by three percent.
 */
import type { AstroIntegration } from 'astro';

/** The first that fits a module has it, and what that module imports and no earlier one has. */
const FILES: readonly { readonly name: string; readonly test: RegExp }[] = [
  // On every page, with what fetches the others: beside any of them, all of that would be fetched with it.
  {
    name: 'base',
    test: /preload-helper|\/core\/units\/unit\.|\/sizer\/(adapters\/(pageUnit|browserStore|shownAgain)|(ordering\/)?model\/(keptSize|draftText|outboxText))\./,
  },
  // On the search page too.
  { name: 'length', test: /\/core\/units\/|\/words\/(format|lang)\./ },
  // The form before there is an answer, with what it needs of the computation till then: else the whole of that
  // would come along. In one file, also where the slip needs a third of it: each one that a page asks for takes a
  // phone's main thread a few milliseconds.
  {
    name: 'form',
    test: /\/core\/(design\/choice|sizing\/strandLengths)\.|\/words\/(sentence|strandLengths|(en|de)\/bodyNames)\.|\/sizer\/form\/(bringAlive|Sizer)\.|\/node_modules\/preact\//,
  },
  // With what shows its answer.
  {
    name: 'computing',
    test: /\/core\/(solver|sizing|geometry)\/|\/sizer\/(form\/answering|model\/limits)\./,
  },
  // Without the drawing on a body, which few look at.
  {
    name: 'drawing',
    test: /\/src\/draw\/(?!layout\/(figure|worn)\.|drawings\/(landmarks|compared|body|pointer)\.)|\/sizer\/drawing\/drawPiece\./,
  },
];

/** What Vite wraps round each import on demand, for any site: it waits for styles too, and is three times as long. */
const VITE_HELPER = '\0vite/preload-helper.js';

/**
 * The same for scripts alone, which is all that this shop fetches on demand: asks at once for what the wanted file
 * imports, so that a phone doesn't learn of each from the one before.
 * @param base the shop's folder on its host
 */
const askAhead = (base: string): string => `
export const __vitePreload = (load, files = []) => {
  for (const file of files) {
    const href = ${JSON.stringify(base)} + file;
    if (document.querySelector('link[href="' + href + '"]') !== null) continue;
    const link = document.createElement('link');
    link.rel = 'modulepreload';
    link.href = href;
    document.head.append(link);
  }
  return load();
};
`;

const groups = FILES.map((file, at) => ({ ...file, priority: FILES.length - at }));

export function scriptFiles(): AstroIntegration {
  let base = '/';
  return {
    name: 'script-files',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'script-files',
                applyToEnvironment: ({ name }) => name === 'client',
                enforce: 'pre',
                configResolved: (config) => {
                  base = config.base;
                },
                load: (id) => (id === VITE_HELPER ? askAhead(base) : null),
                outputOptions: (options) => ({ ...options, codeSplitting: { groups } }),
              },
            ],
          },
        });
      },
    },
  };
}
