/** `POST`: begins an upload; `fingerprint`: to a host whose key she has just confirmed; `folder`: into that one whatever lies there. */
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

/** Another window may have named another folder since she was asked. */
const isFolderNow = (folder: string): boolean => readSettings(hostingFolder())?.folder === folder;

export const POST: APIRoute = async ({ request }) => {
  const form = await readForm(request);
  const asked = form?.get('ask') ?? '';
  // A question that isn't answered with yes begins nothing.
  if (form !== null && (asked === '' || form.get('sure') === 'yes')) {
    if (asked === 'host-key') confirmKey(form.get('fingerprint') ?? '');
    await beginUpload([
      ...(asked === 'folder' && isFolderNow(form.get('folder') ?? '') ? (['--foreign'] as const) : []),
      ...(form.get('whole') === 'yes' ? (['--whole'] as const) : []),
    ]);
  }
  return seeOther('/bench/publish/host/');
};
