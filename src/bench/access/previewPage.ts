/** Has a page of the shop that is shown as a preview stay among previews. */
import { underBase } from '#ui/site/base.ts';

const PREVIEW = /^\/bench\/preview\//;

/** True for the address of a preview. */
export const isPreview = (path: string): boolean => PREVIEW.test(path);

const escaped = (path: string): string => path.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Pictures come from the bench, whose files may be newer than the shop's; pieces, guides and the front page lead to their own previews. */
export function amongPreviews(html: string): string {
  const shop = escaped(underBase('/'));
  const pictures = new RegExp(`(?<=["\\s;])${shop}pictures/`, 'g');
  const pages = new RegExp(
    `(?<=<a [^>]*href=")${shop}((?:de/)?(?:(?:pieces|guides)/[a-z0-9-]+/(?:#[^"]*)?)?)(?=")`,
    'g',
  );
  const drawings = new RegExp(`(?<=<img [^>]*src=")${shop}(?=(?:de/)?pieces/[a-z0-9-]+/[a-z]+\\.svg")`, 'g');
  return html
    .replaceAll(pictures, underBase('/bench/preview/pictures/'))
    .replaceAll(drawings, underBase('/bench/preview/'))
    .replaceAll(pages, (_, path: string) => underBase(`/bench/preview/${path}`));
}

/** The same for an answer; anything but a page goes as it is. */
export async function asPreview(response: Response): Promise<Response> {
  if (!(response.headers.get('content-type') ?? '').startsWith('text/html')) return response;
  const { status, headers } = response;
  return new Response(amongPreviews(await response.text()), { status, headers });
}
