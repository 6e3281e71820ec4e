/** The shop's whole address, which feeds and maps can't do without. */
export function requireSite(site: URL | undefined): URL {
  if (site === undefined) throw new Error('got no site address, expected `site` in astro.config.mjs');
  return site;
}
