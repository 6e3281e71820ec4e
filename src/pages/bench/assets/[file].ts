/** The bench's style and script: answered on demand, so that none of it lies among the public files. */
import { underBase } from '#ui/site/base.ts';
import type { APIRoute } from 'astro';
import script from '#bench/views/bench.client.js?raw';
import board from '#board/entry.tsx?bundle';
import boardSizes from '#board/sizes.ts?bundle';
import boardStyle from '#board/styles/board.css?raw';
import photos from '#bench/views/photos.client.js?raw';
import photosStyle from '#bench/styles/photos.css?raw';
import preview from '#bench/views/preview.client.js?raw';
import previewStyle from '#bench/styles/preview.css?raw';
import priceStyle from '#bench/styles/price.css?raw';
import steps from '#bench/views/steps/walk.client.ts?bundle';
import stepsStyle from '#bench/styles/steps.css?raw';
import style from '#bench/styles/bench.css?raw';
import tutorialStyle from '#ui/styles/tutorial.css?raw';
import tokens from '#ui/styles/tokens.css?raw';

export const prerender = false;

const FILES: Readonly<Record<string, { readonly type: string; readonly text: string }>> = {
  'bench.css': {
    type: 'text/css; charset=utf-8',
    text: tokens.replaceAll("url('/", `url('${underBase('/')}`) + style,
  },
  'bench.js': { type: 'text/javascript; charset=utf-8', text: script },
  'board.css': { type: 'text/css; charset=utf-8', text: boardStyle },
  'board.js': { type: 'text/javascript; charset=utf-8', text: board },
  'board-sizes.js': { type: 'text/javascript; charset=utf-8', text: boardSizes },
  'photos.css': { type: 'text/css; charset=utf-8', text: photosStyle },
  'photos.js': { type: 'text/javascript; charset=utf-8', text: photos },
  'price.css': { type: 'text/css; charset=utf-8', text: priceStyle },
  'steps.css': { type: 'text/css; charset=utf-8', text: stepsStyle },
  'steps.js': { type: 'text/javascript; charset=utf-8', text: steps },
  'preview.css': { type: 'text/css; charset=utf-8', text: previewStyle },
  'tutorial.css': { type: 'text/css; charset=utf-8', text: tutorialStyle },
  'preview.js': { type: 'text/javascript; charset=utf-8', text: preview },
};

export const GET: APIRoute = ({ params }) => {
  const name = params.file ?? '';
  const file = Object.hasOwn(FILES, name) ? FILES[name] : undefined;
  if (file === undefined) return new Response(null, { status: 404 });
  return new Response(file.text, {
    headers: { 'content-type': file.type, 'cache-control': 'no-cache' },
  });
};
