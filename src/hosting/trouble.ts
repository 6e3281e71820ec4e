/** What a connection, or a file on the host, went wrong with, as codes that the bench has sentences for. */
import type { HostTrouble } from '#words/hosting.ts';
import type { HostPlace, Secret } from './settings.ts';

export class HostError extends Error {
  readonly trouble: HostTrouble;

  constructor(trouble: HostTrouble, options?: ErrorOptions) {
    super(trouble.code, options);
    this.trouble = trouble;
  }
}

type Raw = Error & { readonly code?: string | number; readonly level?: string };

const NOT_FOUND = ['ENOTFOUND', 'EAI_AGAIN', 'EAI_NONAME'];
const NO_WAY = ['ETIMEDOUT', 'EHOSTUNREACH', 'ENETUNREACH', 'EHOSTDOWN', 'ENETDOWN'];

/** Of an attempt to connect. */
export function connectTrouble(error: unknown, { host, port, user }: HostPlace, secret: Secret): HostTrouble {
  const { code, level, message } = error as Raw;
  if (NOT_FOUND.includes(String(code))) return { code: 'no-such-host', host };
  if (code === 'ECONNREFUSED') return { code: 'refused', host, port };
  if (NO_WAY.includes(String(code)) || level === 'client-timeout') return { code: 'no-answer', host, port };
  if (level === 'client-authentication') {
    return { code: secret.kind === 'password' ? 'wrong-password' : 'wrong-key', user };
  }
  if (level === 'protocol' || level === 'handshake' || level === 'client-socket') {
    return { code: 'no-ssh', host, port };
  }
  return { code: 'host-said', path: '', said: message };
}

/** Status of an answer (SSH File Transfer Protocol, version 3, section 7). */
export const STATUS = { noSuchFile: 2, permissionDenied: 3, failure: 4 } as const;

/** Of something done with a file. `writing`: bytes were written, which nothing else than room stops. */
export function fileTrouble(error: unknown, path: string, writing = false): HostTrouble {
  const { code, message } = error as Raw;
  // The library's words for every answer that is still open when the host ends what serves files.
  if (code === undefined && message.startsWith('No response')) return { code: 'cut-off' };
  if (code === STATUS.permissionDenied) return { code: 'no-permission', path };
  if (code === STATUS.failure && writing) return { code: 'no-room', path };
  return { code: 'host-said', path, said: message };
}

export const isMissing = (error: unknown): boolean => (error as Raw).code === STATUS.noSuchFile;
