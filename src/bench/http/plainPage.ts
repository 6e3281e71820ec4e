/** A page with one message, made without Astro: for refusals before any page runs. */
import { escapeXml } from '#draw/svg/text.ts';
import type { Lang } from '#words/lang.ts';

/** An HTML answer with a title, a sentence and, where given, a way on. */
export function plainPage(
  status: number,
  lang: Lang,
  title: string,
  text: string,
  onward: { readonly href: string; readonly label: string } | null,
): Response {
  const link =
    onward === null ? '' : `<p><a href="${escapeXml(onward.href)}">${escapeXml(onward.label)}</a></p>`;
  const html = `<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="robots" content="noindex">
<title>${escapeXml(title)}</title>
<link rel="stylesheet" href="/bench/assets/bench.css">
</head>
<body><main id="content"><h1>${escapeXml(title)}</h1><p role="alert">${escapeXml(text)}</p>${link}</main></body>
</html>
`;
  return new Response(html, { status, headers: { 'content-type': 'text/html; charset=utf-8' } });
}
