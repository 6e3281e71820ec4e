/** How far an upload is, for the page that shows it. */
import type { APIRoute } from 'astro';
import { languageOf } from '#bench/models/frame.ts';
import { howFarSent } from '#bench/models/howFarSent.ts';
import { hostingFolder } from '#hosting/place.ts';
import { readHostProgress } from '#hosting/progress.ts';
import { hostingWords } from '#words/words.ts';

export const prerender = false;

export const GET: APIRoute = ({ request }) => {
  const progress = readHostProgress(hostingFolder());
  if (progress.state !== 'running') return Response.json({ running: false });
  return Response.json({ running: true, ...howFarSent(progress, hostingWords(languageOf(request))) });
};
