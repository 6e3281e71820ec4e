/** `POST`: forgets the host's confirmed key, or with `all` host, name and secret too. */
import type { APIRoute } from 'astro';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { hostingFolder } from '#hosting/place.ts';
import { forgetProgress } from '#hosting/progress.ts';
import { readSettings, removeSettings, writeSettings } from '#hosting/settings.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const form = await readForm(request);
  if (form?.get('sure') !== 'yes') return seeOther('/bench/publish/host/');
  const folder = hostingFolder();
  const settings = readSettings(folder);
  forgetProgress(folder);
  if (form.get('what') === 'all') {
    removeSettings(folder);
    return seeOther('/bench/publish/host/?done=removed');
  }
  if (settings !== null) writeSettings(folder, { ...settings, hostKey: null });
  return seeOther('/bench/publish/host/');
};
