/** A `mailto:` address (RFC 6068): lines ended by CRLF, everything escaped, no header can be added by a text. */
export function mailtoLink(to: string, subject: string, body: string): string {
  const line = subject.replace(/[\r\n]+/g, ' ');
  const lines = body.replace(/\r?\n/g, '\r\n');
  const address = to.split('@').map(encodeURIComponent).join('@');
  return `mailto:${address}?subject=${encodeURIComponent(line)}&body=${encodeURIComponent(lines)}`;
}
