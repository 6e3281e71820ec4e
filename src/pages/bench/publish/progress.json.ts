/** How far a publishing is, for the page that shows it. */
import type { APIRoute } from 'astro';
import { languageOf } from '#bench/models/frame.ts';
import { howFar } from '#bench/models/howFar.ts';
import { releasesFolder } from '#catalogue/released/place.ts';
import { readProgress } from '#release/progress.ts';
import { publishWords } from '#words/words.ts';

export const prerender = false;

export const GET: APIRoute = ({ request }) => {
  const progress = readProgress(releasesFolder());
  if (progress.state !== 'running') return Response.json({ running: false });
  return Response.json({ running: true, ...howFar(progress, publishWords(languageOf(request))) });
};
