/** What the maker reads where tablets are let in, and on the tablet while it is paired. */
export const tablets = {
  title: 'Tablets',
  lead: 'A tablet or a telephone beside the board can show cards and steps and keep your place, over your own network at home. It sees the names of buyers on the cards, and nothing else of the bench.',
  off: 'Switched off: nothing on your network can reach the bench.',
  on: (port: number): string => `Switched on: devices on your network at home reach it on port ${port}.`,
  switchOn: 'Switch it on',
  switchOff: 'Switch it off',
  offHint: 'Paired devices stay paired, and can come back when it is on again.',
  noServer: 'Here it can’t be switched on: only a bench begun with “npm start” lets tablets in.',
  problems: {
    'port-taken': (port: number): string =>
      `Port ${port} is in use by another program. End that one, or set CLASPWISE_TABLET_PORT to another port and start again.`,
    'no-certificate':
      'The certificate can’t be written beside the order book. Give your account the right to write there, then switch it on again.',
    failed:
      'It could not be opened. Start the bench again; if that doesn’t help, set CLASPWISE_TABLET_PORT to another port.',
  },
  noAddress: 'This machine has no address on a network just now. Join it to your network at home.',

  pair: 'Pair a device',
  pairHint: (minutes: number): string =>
    `Show a code, and scan it with the device’s camera. The code works once, for ${minutes} minutes.`,
  showCode: 'Show a code',
  codeLabel: (address: string): string => `Code that opens ${address}`,
  codeIsUp: 'Scan this with the tablet now.',
  noCamera: 'No camera?',
  noCameraHint: 'Bring this address to the device by a way of your own. Whoever opens it first is paired.',
  others: 'If that doesn’t lead anywhere: this machine’s other addresses',
  elsewhereHint:
    'If the device finds nothing: both must be in the same network, and this machine’s firewall must let the port through.',

  fingerprint: 'The certificate',
  warning:
    'The first time, the device’s browser warns that the connection isn’t private. It has to: it can’t know this machine, whose certificate the bench made for itself. Before you go on, have the browser show the certificate, and hold its SHA-256 fingerprint against this one. If it is another, stop: somebody stands between.',
  fingerprintLabel: 'SHA-256 fingerprint',
  lasts: (day: string): string =>
    `It lasts until ${day} and is made anew before that, and whenever this machine gets another address. The browser then warns once more, and at another address a device has to be paired again: have your router always give this machine the same one.`,

  devices: 'Paired devices',
  none: 'None yet.',
  paired: (when: string): string => `paired ${when}`,
  seen: (when: string): string => `last seen ${when}`,
  sendAway: 'Send it away',
  sendAwayFor: (name: string): string => `Send “${name}” away`,
  gone: 'Sent away. It is let in no more, from this moment on.',

  /** On the device. */
  nameTitle: 'Pair this device',
  name: 'A name for it',
  nameHint: 'So that you know it again on the list at the machine: “Kitchen tablet”.',
  pairThis: 'Pair it',
  safety: 'Whoever holds it can read the cards. Send it away at the machine when it is lost or given on.',
};
