/**
 * How the browser's code is cut into files. Left alone it falls into a file for every set of pages that share
 * something, and thirty small files compress worse than a dozen by what they are for: the island's by three percent.
 */
import type { AstroIntegration } from 'astro';

/** The first that fits a module has it, and what that module imports and no earlier one has. */
const FILES: readonly { readonly name: string; readonly test: RegExp }[] = [
  { name: 'preact', test: /\/node_modules\/preact\// },
  // On every page.
  {
    name: 'base',
    test: /\/core\/units\/unit\.|\/sizer\/(adapters\/(pageUnit|browserStore)|model\/keptSize)\./,
  },
  // On the search page too.
  { name: 'length', test: /\/core\/units\/|\/words\/(format|lang)\./ },
  // What the island needs of the computation before there is one: else the whole of it would come along.
  {
    name: 'first',
    test: /\/core\/(design\/(choice|alternatives|swap|loopParts)|sizing\/strandLengths)\.|\/order\/document\.|\/words\/(sentence|strandLengths)\./,
  },
  { name: 'computing', test: /\/core\/(solver|sizing|geometry)\// },
  // Without the drawing on a body, which few look at.
  {
    name: 'drawing',
    test: /\/src\/draw\/(?!layout\/(figure|worn)\.|drawings\/(landmarks|compared|body|pointer)\.)|\/sizer\/drawing\/drawPiece\./,
  },
];

const groups = FILES.map((file, at) => ({ ...file, priority: FILES.length - at }));

export function scriptFiles(): AstroIntegration {
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
                outputOptions: (options) => ({ ...options, codeSplitting: { groups } }),
              },
            ],
          },
        });
      },
    },
  };
}
