/**
 * Where on its host the shop stands: at `/`, or in a folder such as `/shop/`.
 * It comes from the address in content/shop.yaml by way of astro.config.mjs,
 * and this is the one file that knows of it.
 */

/** With a slash at both ends. Outside a build (tests, plain Node) the shop stands at the root. */
function base(): string {
  const { BASE_URL = '/' } = (import.meta.env as Partial<ImportMetaEnv> | undefined) ?? {};
  return BASE_URL.endsWith('/') ? BASE_URL : `${BASE_URL}/`;
}

/** A path of the shop as a browser has to ask for it: `/mark.svg` is `/shop/mark.svg` in the folder `/shop/`. */
export const underBase = (path: `/${string}`): string => base() + path.slice(1);

/** The folder that the shop lies in, for what browsers keep; undefined at the root of its host. */
export const folder = (): string | undefined => (base() === '/' ? undefined : base());

/** The other way: the path within the shop that a browser asked for. One outside the shop stays as it is. */
export const insideBase = (path: string): string =>
  path.startsWith(base()) ? path.slice(base().length - 1) : path;

/**
 * Has links and pictures of rendered Markdown that begin with a slash lead into the shop.
 * @param html of a text that holds no HTML of its own, so that every tag is the renderer's
 */
export const linksUnderBase = (html: string): string =>
  html.replace(
    /(<(?:a|img)\b[^>]*?\s(?:href|src)=")(\/(?!\/)[^"]*)/g,
    (_, before: string, path: `/${string}`) => before + underBase(path),
  );
