/** Drawings made on demand. */

export const svgResponse = (svg: string): Response =>
  new Response(svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
