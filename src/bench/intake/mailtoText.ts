/** A prepared e-mail that was copied as an address: `mailto:…?subject=…&body=…` (RFC 6068). */

const MAILTO = /^[\s<"']*mailto:[^?\s]*\?([\s\S]*?)[\s>"']*$/i;
const ESCAPED = /(?:%[\dA-F]{2})+/gi;

/** Subject and body of such an address; null for a text that is none. */
export function mailtoText(text: string): string | null {
  const query = MAILTO.exec(text)?.[1];
  if (query === undefined) return null;
  // Copied out of a page's source it has `&amp;`; copied from a mail it may be broken into lines.
  const fields = query
    .replace(/\s*[\r\n]\s*/g, '')
    .replaceAll('&amp;', '&')
    .split('&');
  const value = (name: string): string | undefined =>
    fields.find((field) => field.toLowerCase().startsWith(`${name}=`))?.slice(name.length + 1);
  const body = value('body');
  if (body === undefined) return null;
  const subject = value('subject');
  const head = subject === undefined ? '' : `Subject: ${percentDecoded(subject)}\n\n`;
  return head + percentDecoded(body).replace(/\r\n?/g, '\n');
}

/** Escapes decoded as UTF-8; a `%` that begins none stays as it is. */
function percentDecoded(text: string): string {
  return text.replace(ESCAPED, (run) => {
    const bytes = Uint8Array.from(run.slice(1).split('%'), (hex) => parseInt(hex, 16));
    return new TextDecoder().decode(bytes);
  });
}
