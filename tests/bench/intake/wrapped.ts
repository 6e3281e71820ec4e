/** One text as mail programs wrap it: in HTML of many kinds, forwarded, as an address, in UTF-16. */

const escaped = (line: string): string =>
  line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('½', '&frac12;').replaceAll('ë', '&euml;');
const linked = (line: string): string =>
  escaped(line)
    .replace(/(\S+@\S+\.\w+)/g, '<a href="mailto:$1">$1</a>')
    .replace(/(claspwise\d\.\S+)/g, '<a href="http://$1">$1</a>')
    .replace(/(Mill Lane)/g, '<a href="https://maps.example/?q=$1">$1</a>');
const lines = (text: string, line: (one: string) => string): string =>
  text.replace(/\n$/, '').split('\n').map(line).join('');

/** HTML in which each line is an element of its own. */
export const PAGES: Readonly<Record<string, (text: string) => string>> = {
  'a div a line': (text) => lines(text, (one) => `<div>${escaped(one) || '<br>'}</div>`),
  'a div a line, with breaks and links': (text) => lines(text, (one) => `<div>${linked(one)}<br></div>\r\n`),
  'a paragraph a line': (text) =>
    lines(text, (one) => `<p class="MsoNormal">${escaped(one) || '<o:p>&nbsp;</o:p>'}</p>\r\n`),
  'an empty paragraph between': (text) => lines(text, (one) => `<p>${linked(one)}</p>`),
  'spans and breaks': (text) => `<p>${lines(text, (one) => `<span>${linked(one)}</span><br>`)}</p>`,
  'a table cell a line': (text) =>
    `<table><tbody>${lines(text, (one) => `<tr><td>${linked(one)}</td></tr>`)}</tbody></table>`,
  'label and value in two cells': (text) =>
    `<table>${lines(text, (one) => `<tr><td>${escaped(one).replace(/^([A-Z][\w ]{2,30}):\s*/, '$1</td><td>')}</td></tr>`)}</table>`,
  'a page with a head': (text) =>
    `<!DOCTYPE html><html><head><title>Mail</title><style>p{color:red}</style></head><body>${lines(text, (one) => `<div>${linked(one)}</div>`)}</body></html>`,
};

const HEAD =
  'From: =?utf-8?Q?Zo=C3=AB_Quill?= <zoe@example.org>\r\nTo: orders@ninepin.example\r\nSubject: Order\r\nMIME-Version: 1.0\r\n';
const base64 = (text: string): string => Buffer.from(text).toString('base64').replace(/.{76}/g, '$&\r\n');
const crlf = (text: string): string => text.replace(/\r?\n/g, '\r\n');

export const htmlOnly = (html: string): string =>
  `${HEAD}Content-Type: text/html; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64(html)}`;

const forwarding = (type: string, disposition: string, message: string): string =>
  `From: wren@ninepin.example\r\nSubject: Fwd\r\nMIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=f\r\n\r\n--f\r\nContent-Type: text/plain\r\n\r\nSee below.\r\n--f\r\nContent-Type: ${type}\r\nContent-Disposition: ${disposition}\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64(message)}\r\n--f--\r\n`;

/** Messages (RFC 5322) that hold the text somewhere. */
export function wrappedMessages(text: string): Record<string, string> {
  const plain = `${HEAD}Content-Type: text/plain; charset=utf-8\r\n\r\n${crlf(text)}`;
  const page = PAGES['a div a line']?.(text) ?? '';
  const blank = `${HEAD}Content-Type: multipart/alternative; boundary=b\r\n\r\n--b\r\nContent-Type: text/plain\r\n\r\n \r\n\r\n--b\r\nContent-Type: text/html; charset=utf-8\r\n\r\n${page}\r\n--b--\r\n`;
  return {
    ...Object.fromEntries(Object.entries(PAGES).map(([name, wrap]) => [name, htmlOnly(wrap(text))])),
    'a blank text part': blank,
    'forwarded in base64': forwarding('message/rfc822', 'attachment; filename="Order.eml"', plain),
    'forwarded in base64, shown inline': forwarding('message/rfc822', 'inline', plain),
    'forwarded as an unknown file': forwarding(
      'application/octet-stream; name="Order.eml"',
      'attachment; filename="Order.eml"',
      blank,
    ),
    'forwarded twice': forwarding(
      'message/rfc822',
      'attachment',
      forwarding('message/rfc822', 'attachment', plain),
    ),
    'a text file attached': forwarding('text/plain; name="order.txt"', 'attachment', text),
  };
}

const address = (text: string): string => encodeURIComponent(crlf(text));

/** Texts and files that hold the text without being a message. */
export function wrappedTexts(text: string): Record<string, Uint8Array> {
  const utf16 = Buffer.from(`\uFEFF${crlf(text)}`, 'utf16le');
  const link = `mailto:orders@ninepin.example?subject=Order%3A%20100%25&body=${address(text)}`;
  return {
    'a mailto address': Buffer.from(link),
    'a mailto address in brackets, broken into lines': Buffer.from(`<${link.replace(/.{70}/g, '$&\n')}>`),
    'a mailto address out of a page': Buffer.from(link.replace('&', '&amp;')),
    'UTF-16, little end first': utf16,
    'UTF-16, big end first': Buffer.from(utf16).swap16(),
    'a page saved': Buffer.from(PAGES['a page with a head']?.(text) ?? ''),
  };
}
