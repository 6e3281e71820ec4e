/** The road of the host's page: settings come in, are kept or shown again with what is to mend. */
import { readShop } from '#catalogue/collections.ts';
import { hostingFolder } from '#hosting/place.ts';
import { forgetProgress } from '#hosting/progress.ts';
import { readSettings, writeSettings, type HostPlace } from '#hosting/settings.ts';
import { troubleResponse } from './access/refusal.ts';
import { bench } from './context/bench.ts';
import { readFileForm, seeOther } from './http/readForm.ts';
import { frameFor } from './models/frame.ts';
import type { HostAttempt, HostPage } from './models/hostSheet.ts';
import { readHostForm, typedHost } from './publish/hostForm.ts';
import { hostStanding } from './publish/hostStanding.ts';

/** The largest key with everything around it. */
const MOST_BYTES = 128 * 1024;

const isSamePlace = (one: HostPlace, other: HostPlace): boolean =>
  one.host === other.host &&
  one.port === other.port &&
  one.user === other.user &&
  one.folder === other.folder;

export async function hostPage(request: Request): Promise<HostPage | Response> {
  const frame = frameFor(request, await readShop(), bench().nowMs());
  const shown = (status: number, attempt: HostAttempt | null): HostPage => ({
    frame,
    standing: hostStanding(),
    attempt,
    status,
  });
  if (request.method !== 'POST') return shown(200, null);
  const form = await readFileForm(request, MOST_BYTES);
  if ('code' in form) return troubleResponse({ code: form.code }, form.status, request);
  const folder = hostingFolder();
  const before = readSettings(folder);
  const typed = typedHost(form);
  if ((form.get('revision') ?? '') !== (before?.revision ?? '')) {
    return shown(409, { typed, problems: [{ field: null, trouble: { code: 'changed-meanwhile' } }] });
  }
  const read = await readHostForm(form, before);
  if (!read.ok) return shown(422, { typed, problems: read.problems });
  writeSettings(folder, read.settings);
  // What was asked or said of another place isn't of this one.
  if (before === null || !isSamePlace(before, read.settings)) forgetProgress(folder);
  return seeOther('/bench/publish/host/?done=saved');
}
