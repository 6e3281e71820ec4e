/** What the maker reads on bringing her shop to a host elsewhere. */
import type { HostFormTrouble, HostStep, HostTrouble } from '../hosting.ts';

const files = (count: number): string => (count === 1 ? '1 file' : `${count} files`);
const at = (path: string): string => (path === '' || path === '.' ? 'the folder' : path);

const steps: Readonly<Record<HostStep, string>> = {
  connecting: 'Calling your host …',
  comparing: 'Looking at what lies there …',
  sending: 'Sending what is new …',
  clearing: 'Clearing away what is no longer needed …',
};

function trouble(one: HostTrouble): string {
  switch (one.code) {
    case 'no-such-host':
      return `No host is called ${one.host}. Look at how it is spelled in your host’s letter, and whether you are online.`;
    case 'refused':
      return `${one.host} is there, but takes no SFTP at port ${one.port}. Ask your host which port it is, and whether SFTP has to be switched on first.`;
    case 'no-answer':
      return `${one.host} doesn’t answer at port ${one.port}. Look at host and port, and whether you are online; else try again later.`;
    case 'no-ssh':
      return `What answers at ${one.host}, port ${one.port}, speaks no SFTP that is safe to use. Plain FTP won’t do: ask your host for SFTP.`;
    case 'wrong-password':
      return `Your host doesn’t take this password for ${one.user}. Type both anew, as your host gave them to you for SFTP.`;
    case 'wrong-key':
      return `Your host doesn’t take this key for ${one.user}. Look at the name, and whether the key’s public half has been entered at your host.`;
    case 'key-unreadable':
      return 'The private key that is kept here can’t be read. Enter it anew.';
    case 'key-locked':
      return 'The private key that is kept here doesn’t open with its passphrase. Enter both anew.';
    case 'host-key-changed':
      return 'Your host shows another fingerprint than the one you confirmed. Nothing was sent, your password neither. Either your host has a new key, or somebody has come between you and it. Ask your host, not by this connection, before you go on.';
    case 'no-sftp':
      return 'Your host let you in, but has no SFTP for you. Ask it to switch SFTP on for your account.';
    case 'not-a-folder':
      return 'There is a file where the folder should be. Look at how the folder is called.';
    case 'no-permission':
      return `Your host doesn’t let you write ${at(one.path)}. Look at the folder’s name, or ask your host for the right to write into it.`;
    case 'no-room':
      return `Your host took no more while ${at(one.path)} was on its way: its disk, or your share of it, is probably full. Make room there or ask for more, then send again.`;
    case 'cut-off':
      return 'The line broke. What has arrived stays there; send again, and it goes on from there.';
    case 'host-said':
      return `It didn’t work${one.path === '' ? '' : `, at ${at(one.path)}`}. What was said: ${one.said}`;
    case 'stopped':
      return 'It was stopped before it was done. Send again, and it goes on from there.';
  }
}

const formTroubles: Readonly<Record<HostFormTrouble['code'], string>> = {
  'host-unreadable':
    'That is no host’s name. It looks like sftp.example.org: no https:// before it, no slash.',
  'port-unreadable': 'A port is a whole number from 1 to 65535. Nearly all hosts have 22.',
  'user-missing': 'Enter the name that your host has you under.',
  'folder-unreadable': 'Enter the folder, as public_html or /var/www/shop, without “..”.',
  'secret-missing': 'Enter the password, or a private key.',
  'secret-twice': 'Enter a password or a key, not both.',
  'key-unreadable':
    'That is no private key that can be read here. Take the file as it was made, with its first and last line.',
  'key-locked': 'This key has a passphrase. Enter the one that opens it.',
  'key-public': 'That is the public half of a key. The private half is needed: the file without “.pub”.',
  'too-long': 'That is more than these fields hold.',
  'changed-meanwhile':
    'The settings were changed in another window meanwhile. What is kept now stands on this page after you open it anew; nothing was changed by this one.',
};

export const hosting = {
  title: 'On a host elsewhere',
  lead: 'What you have published can go to any host for plain websites: as one file to unpack there, or by SFTP, which sends only what changed.',
  zip: 'Download the shop as a zip file',
  zipHint: 'Unpack it into your website’s folder, so that its index.html lies there.',
  way: 'Send it by SFTP',
  published: (when: string): string => `You published last on ${when}.`,
  there: (when: string): string => `On your host lies what you published on ${when}.`,
  behind: 'What you published since isn’t there yet.',
  noSettings: 'There are no settings for a host yet.',
  nothingPublished: 'Nothing has been published yet. Publish first.',
  another: 'It is being sent already. Wait until that is done.',
  send: 'Send now',
  resend: 'Send every file again, whatever lies there',
  resendHint: 'Where somebody has changed or removed files there by hand.',
  running: 'It is being sent',
  steps,
  progress: (done: number, of: number): string => `${done} of ${files(of)}`,
  stay: 'You can close this page; it goes on by itself. Visitors see the old shop until the new pages are there.',
  done: (when: string, sent: number, removed: number, seconds: string): string =>
    `All there (${when}): ${files(sent)} sent${removed > 0 ? `, ${files(removed)} removed` : ''}, in ${seconds} s.`,
  nothingToSend: (when: string): string => `All there (${when}); nothing had changed.`,
  terminal: (sent: number, removed: number, seconds: string): string =>
    `All there: ${files(sent)} sent, ${files(removed)} removed, in ${seconds} s.`,
  failed: (when: string): string => `It didn’t get there (${when}).`,
  trouble,
  newHost:
    'You call this host for the first time. Compare its fingerprint with the one your host has told you of: in its letter, or on its help pages. Only then does your password go there.',
  fingerprint: 'Fingerprint',
  keyType: 'Kind of key',
  knownPrint: 'As you confirmed it',
  gotPrint: 'As it is now',
  trustSure: 'It is the one that my host told me of',
  trust: 'That is my host: send',
  foreign: (folder: string): string =>
    `In ${folder} lie files that did not come from here. Those with the same name would be replaced; all others would stay as they are.`,
  foreignSome: (count: number): string => `In all: ${count}. Among them:`,
  foreignSure: 'It is the right folder, and what has the same name may be replaced',
  foreignSend: 'Send into this folder',
  forgetTitle: 'My host has a new key',
  forgetSure: 'My host has confirmed that it has a new key',
  forget: 'Forget the old one',
  settings: 'Your host',
  settingsLead:
    'Your host has told you these when you became its customer, mostly under “SFTP” or “SSH”. Password or key stay in a file on this machine that only your account may read; no page shows them again, and no backup holds them.',
  host: 'Host',
  hostHint: 'As sftp.example.org',
  port: 'Port',
  user: 'Name of the account',
  folder: 'Folder of the website',
  folderHint: 'As public_html; it is made if it isn’t there',
  password: 'Password',
  passwordKept: 'A password is kept. Leave it empty to go on with it.',
  keyKept: 'A private key is kept. Leave password and key empty to go on with it.',
  orKey: 'Or a private key',
  key: 'Private key, as text',
  keyFile: 'Or its file',
  passphrase: 'Passphrase of the key, if it has one',
  save: 'Save',
  saved: 'Saved.',
  removed: 'Taken away.',
  changeSettings: 'Change the settings',
  remove: 'Take these settings away',
  removeLead: 'Password or key are deleted here. What lies on the host stays there.',
  removeSure: 'Delete host, name and password or key here',
  removeButton: 'Take away',
  back: 'Back to publishing',
  formTroubles,
  formTrouble: 'Nothing was saved:',
};
