/** Which pages may post to the desk (Fetch standard, CORS protocol). */

/** A page of the desk's own host, of a named shop elsewhere, or something that is no page and so sends no origin. */
export function allowOrigin(origin: string | null, host: string, others: readonly string[]): boolean {
  if (origin === null) return true;
  if (others.includes(origin)) return true;
  return URL.canParse(origin) && new URL(origin).host === host.toLowerCase();
}

/** The answer to a browser that asks first. `origin`: null where it isn't allowed. */
export function preflight(origin: string | null): Response {
  if (origin === null) return new Response(null, { status: 403 });
  return new Response(null, {
    status: 204,
    headers: {
      'access-control-allow-origin': origin,
      'access-control-allow-methods': 'POST',
      'access-control-allow-headers': 'content-type',
      'access-control-max-age': '600',
      vary: 'Origin',
    },
  });
}
