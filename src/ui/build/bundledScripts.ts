/**
 * `import script from '#board/entry.tsx?bundle'`: a script with all that it imports, as one text. For what is
 * served behind the bench's door: scripts that Astro builds lie among the public files.
 */
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';

const MARK = '?bundle';

/** Its files' paths come along, so that development notices when one changes. */
async function bundle(file: string): Promise<{ text: string; inputs: readonly string[] }> {
  const { outputFiles, metafile } = await build({
    entryPoints: [file],
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    target: 'es2023',
    minify: true,
    legalComments: 'none',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'silent',
  });
  return { text: outputFiles[0]?.text ?? '', inputs: Object.keys(metafile.inputs) };
}

export function bundledScripts(): AstroIntegration {
  return {
    name: 'bundled-scripts',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'bundled-scripts',
                enforce: 'pre',
                async resolveId(source: string, importer: string | undefined) {
                  if (!source.endsWith(MARK)) return null;
                  const found = await this.resolve(source.slice(0, -MARK.length), importer);
                  return found === null ? null : found.id + MARK;
                },
                async load(id: string) {
                  if (!id.endsWith(MARK)) return null;
                  const { text, inputs } = await bundle(id.slice(0, -MARK.length));
                  for (const input of inputs) this.addWatchFile(input);
                  return `export default ${JSON.stringify(text)};`;
                },
              },
            ],
          },
        });
      },
    },
  };
}
