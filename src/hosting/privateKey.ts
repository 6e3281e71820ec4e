/** Whether a text is a private key that can be used. */
import ssh2 from 'ssh2';

export type KeyTrouble = 'key-unreadable' | 'key-locked' | 'key-public';

/** What is wrong with it; null for one that can be used. `key-locked`: not with this passphrase, or not without one. */
export function readPrivateKey(text: string, passphrase: string | null): KeyTrouble | null {
  const parsed = ssh2.utils.parseKey(text, passphrase ?? undefined);
  if (parsed instanceof Error) {
    return /encrypted|passphrase|integrity|decrypt/i.test(parsed.message) ? 'key-locked' : 'key-unreadable';
  }
  const key = Array.isArray(parsed) ? parsed[0] : parsed;
  return key?.isPrivateKey() === true ? null : 'key-public';
}
