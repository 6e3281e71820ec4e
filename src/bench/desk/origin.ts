/** Which pages may post to the desk (Fetch standard, CORS protocol). */

/** A page of the desk's own origin, of a named shop elsewhere, or something that is no page and so sends no origin. */
export const allowOrigin = (origin: string | null, origins: readonly string[]): boolean =>
  origin === null || origins.includes(origin);

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
