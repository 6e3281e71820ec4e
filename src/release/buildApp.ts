/** Astro's app of a build, out of the renderer that a build makes for itself. */
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
import { eachOnce, requestOfPage, type Kept, type PagePath } from './pages.ts';

/** As far as it is used here. */
export type BuildApp = ConstructorParameters<typeof StaticPaths>[0] & {
  readonly manifest: { readonly base: string; readonly site?: string };
  setInternals(internals: object): void;
  setOptions(options: object): void;
  render(request: Request, options: { routeData: PagePath['route'] }): Promise<Response>;
};

const SILENT = { options: { destination: { write: () => true }, level: 'silent' } };

/** Every path that becomes a file, each once. */
export const pathsOf = async (app: BuildApp): Promise<PagePath[]> =>
  eachOnce((await new StaticPaths(app).getAll()) as unknown as PagePath[]);

/** The app of a renderer that was kept. Throws where it can't be loaded. */
export async function loadApp(render: string, { entry, styles }: Kept): Promise<BuildApp> {
  const { app } = (await import(pathToFileURL(join(render, entry)).href)) as { app: BuildApp };
  app.setInternals({ pagesByKeys: new Map(styles.map(([key, some]) => [key, { styles: [...some] }])) });
  // No integration of this project injects a script; one that did would change astro.config.mjs, and so the code's mark.
  app.setOptions({ settings: { scripts: [] }, logger: SILENT });
  return app;
}

/** Makes one page. Throws where it answers anything but the page. */
export async function makePage(app: BuildApp, path: PagePath): Promise<Buffer> {
  const { base, site = 'http://localhost' } = app.manifest;
  const response = await app.render(requestOfPage(path, base, site), { routeData: path.route });
  if (!response.ok && path.pathname !== '/404') {
    throw new Error(`${path.pathname} answered ${response.status}`);
  }
  return Buffer.from(await response.arrayBuffer());
}
