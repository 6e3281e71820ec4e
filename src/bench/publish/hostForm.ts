/** The form of a host's settings, read field by field. */
import { domainToASCII } from 'node:url';
import type { HostPlace, HostSettings, Secret } from '#hosting/settings.ts';
import { readPrivateKey } from '#hosting/privateKey.ts';
import type { HostField, HostFormTrouble } from '#words/hosting.ts';

/** What was typed, but for what is secret, which no page shows again. */
export type TypedHost = Readonly<Record<'host' | 'port' | 'user' | 'folder', string>>;

export type HostFormProblem = {
  /** Null for the form as a whole. */
  readonly field: HostField | null;
  readonly trouble: HostFormTrouble;
};

export type HostFormRead =
  | { readonly ok: true; readonly settings: Pick<HostSettings, 'secret' | 'hostKey'> & HostPlace }
  | { readonly ok: false; readonly problems: readonly HostFormProblem[] };

const USUAL_PORT = '22';
/** A name of the Domain Name System (RFC 1035, 2.3.4) or an address. */
const MOST_HOST = 253;
const MOST_USER = 100;
const MOST_FOLDER = 500;
const MOST_PASSWORD = 1000;

const CONTROL = /[\u0000-\u001f\u007f]/;

const textOf = (form: FormData, name: string): string => {
  const value = form.get(name);
  return typeof value === 'string' ? value : '';
};

export const typedHost = (form: FormData): TypedHost => ({
  host: textOf(form, 'host').trim(),
  port: textOf(form, 'port').trim(),
  user: textOf(form, 'user').trim(),
  folder: textOf(form, 'folder').trim(),
});

/** A name in the letters that the network knows, or an address; null for anything else. */
function hostOf(text: string): string | null {
  if (/^[\da-f:]+$/i.test(text) && text.includes(':')) return text.toLowerCase();
  const name = domainToASCII(text);
  return name.length <= MOST_HOST && /^[\w-]+(\.[\w-]+)*$/.test(name) ? name : null;
}

function portOf(text: string): number | null {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : 0;
  return port >= 1 && port <= 65_535 ? port : null;
}

/** A path without a detour; what begins at the account's own place is written without a mark for it. */
function folderOf(text: string): string | null {
  const path = text.replace(/^~\//, '').replace(/(?<=.)\/+$/, '');
  const sound = path !== '' && path.length <= MOST_FOLDER && !CONTROL.test(path);
  return sound && !path.split('/').includes('..') ? path : null;
}

async function keyOf(form: FormData): Promise<string> {
  const file = form.get('key-file');
  const text = file instanceof File && file.size > 0 ? await file.text() : textOf(form, 'key');
  const plain = text.replace(/\r\n?/g, '\n').trim();
  return plain === '' ? '' : `${plain}\n`;
}

type SecretRead = { readonly secret: Secret } | { readonly problem: HostFormProblem };

async function secretOf(form: FormData, kept: Secret | null): Promise<SecretRead> {
  const password = textOf(form, 'password');
  const key = await keyOf(form);
  const passphrase = textOf(form, 'passphrase') || null;
  const problem = (field: HostField, code: HostFormTrouble['code']): SecretRead => ({
    problem: { field, trouble: { code } },
  });
  if (password !== '' && key !== '') return problem('password', 'secret-twice');
  if (password.length > MOST_PASSWORD) return problem('password', 'too-long');
  if (password !== '') return { secret: { kind: 'password', password } };
  if (key === '') return kept === null ? problem('password', 'secret-missing') : { secret: kept };
  const trouble = readPrivateKey(key, passphrase);
  return trouble === null ? { secret: { kind: 'key', key, passphrase } } : problem('key', trouble);
}

/**
 * @param before settings that are kept; their secret and the host's confirmed key stay only with the same host and port:
 * what is meant for one host is shown to no other
 */
export async function readHostForm(form: FormData, before: HostSettings | null): Promise<HostFormRead> {
  const typed = typedHost(form);
  const host = hostOf(typed.host);
  const port = portOf(typed.port === '' ? USUAL_PORT : typed.port);
  const folder = folderOf(typed.folder);
  const user =
    typed.user === '' || typed.user.length > MOST_USER || CONTROL.test(typed.user) ? null : typed.user;
  const same = before !== null && before.host === host && before.port === port ? before : null;
  const read = await secretOf(form, same?.secret ?? null);
  const problems: HostFormProblem[] = [];
  if (host === null) problems.push({ field: 'host', trouble: { code: 'host-unreadable' } });
  if (port === null) problems.push({ field: 'port', trouble: { code: 'port-unreadable' } });
  if (user === null) problems.push({ field: 'user', trouble: { code: 'user-missing' } });
  if (folder === null) problems.push({ field: 'folder', trouble: { code: 'folder-unreadable' } });
  if ('problem' in read) problems.push(read.problem);
  if (host === null || port === null || user === null || folder === null || 'problem' in read) {
    return { ok: false, problems };
  }
  return {
    ok: true,
    settings: { host, port, user, folder, secret: read.secret, hostKey: same?.hostKey ?? null },
  };
}
