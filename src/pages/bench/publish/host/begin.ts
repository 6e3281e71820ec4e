/** `POST`: begins an upload; `fingerprint`: to a host whose key she has just confirmed; `foreign`: into that folder all the same. */
import type { APIRoute } from 'astro';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { beginUpload } from '#bench/publish/run.ts';
import { hostingFolder } from '#hosting/place.ts';
import { readHostProgress } from '#hosting/progress.ts';
import { readSettings, writeSettings } from '#hosting/settings.ts';

export const prerender = false;

/** Keeps the key that the host has shown, where it is the one that she has seen. */
function confirmKey(fingerprint: string): void {
  const folder = hostingFolder();
  const settings = readSettings(folder);
  const progress = readHostProgress(folder);
  if (settings === null || settings.hostKey !== null || progress.state !== 'asking') return;
  const { question } = progress;
  if (question.about !== 'host-key' || question.key.fingerprint !== fingerprint) return;
  writeSettings(folder, { ...settings, hostKey: question.key });
}

export const POST: APIRoute = async ({ request }) => {
  const form = await readForm(request);
  const asked = form?.get('ask') ?? '';
  // A question that isn't answered with yes begins nothing.
  if (form !== null && (asked === '' || form.get('sure') === 'yes')) {
    if (asked === 'host-key') confirmKey(form.get('fingerprint') ?? '');
    await beginUpload([
      ...(asked === 'folder' ? (['--foreign'] as const) : []),
      ...(form.get('whole') === 'yes' ? (['--whole'] as const) : []),
    ]);
  }
  return seeOther('/bench/publish/host/');
};
