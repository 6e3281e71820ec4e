import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crc32 } from '#order/crc32.ts';
import { foldCompact, mailBody, slipLink } from '#order/mail.ts';
import { mailtoLink } from '#order/mailtoLink.ts';
import { decode, decodeAll, encode } from '#order/text.ts';
import { anyOrder, posted, sample } from './orders.ts';

/** Real quoted-printable by RFC 2045, 6.7: soft breaks at 75 characters, everything but plain ASCII escaped. */
function quotedPrintable(text: string): string {
  const escaped = [...new TextEncoder().encode(text)].map((byte) =>
    byte === 10
      ? '\r\n'
      : byte < 32 || byte > 126 || byte === 61
        ? `=${byte.toString(16).toUpperCase().padStart(2, '0')}`
        : String.fromCharCode(byte),
  );
  return escaped
    .join('')
    .split('\r\n')
    .map((line) =>
      line
        .replace(/ $/, '=20')
        .replace(/(.{70}(?:=.?|.)?)(?=.)/g, (all) => (/=.?$/.test(all) ? all : `${all}=\r\n`)),
    )
    .join('\r\n');
}

const mail = (order: typeof sample): string =>
  mailBody(
    {
      subject: 'Order',
      greeting: 'Dear Wren,',
      lines: ['Piece: Weir light'],
      closing: 'Iris',
      foot: 'For the bench:',
    },
    order,
  );

describe('the compact form', () => {
  it('gives back every document', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const read = decode(encode(order));
        expect(read).toEqual({ ok: true, document: order });
        expect(JSON.stringify(read.ok && read.document)).toBe(JSON.stringify(order));
      }),
      { numRuns: 500 },
    );
  });

  it('holds a normal order in 600 characters', () => {
    expect(encode(sample).length).toBeLessThanOrEqual(600);
    const chatty = { ...sample, buyer: { ...sample.buyer, note: 'x'.repeat(240) } };
    expect(encode(chatty).length).toBeLessThanOrEqual(600);
    expect(encode(posted).length).toBeLessThanOrEqual(600);
  });

  it('carries the CRC-32 that zlib knows', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
    fc.assert(fc.property(fc.uint8Array(), (bytes) => crc32(bytes) === zlibCrc32(bytes)));
  });

  it('needs no escape in an address', () => {
    fc.assert(fc.property(anyOrder, (order) => encodeURIComponent(encode(order)) === encode(order)));
    expect(decode(slipLink('https://ninepin.example/slip/', sample))).toEqual({ ok: true, document: sample });
  });

  it.each<[string, (text: string) => string]>([
    ['lines of 64', (text) => text],
    ['CRLF', (text) => text.replaceAll('\n', '\r\n')],
    ['quoted once', (text) => text.replace(/^/gm, '> ')],
    ['quoted thrice', (text) => text.replace(/^/gm, '>> > ')],
    ['quoted with bars', (text) => text.replace(/^/gm, '| ')],
    ['soft hyphens', (text) => text.replace(/(\w{20})(?=\w)/g, '$1\u00ad')],
    ['zero-width spaces', (text) => text.replace(/(\w{20})(?=\w)/g, '$1\u200b')],
    ['broken at 40 again', (text) => text.replace(/(.{40})(?=.)/g, '$1\n')],
    ['indented by tabs', (text) => text.replace(/^/gm, '\t\t')],
    ['no-break spaces at line ends', (text) => text.replace(/$/gm, '\u00a0')],
    ['left as quoted-printable', quotedPrintable],
    ['spaces at line ends as =20', (text) => text.replace(/\n/g, '=20\n')],
    ['as HTML', (text) => text.replace(/\n/g, '<br>\n').replace(/ /g, '&nbsp;')],
    ['HTML quote marks', (text) => text.replace(/^/gm, '&gt; ')],
    ['break opportunities', (text) => text.replace(/(\w{30})(?=\w)/g, '$1<wbr>')],
    ['a link between angle brackets', () => `<${slipLink('https://ninepin.example/slip/', sample)}>`],
    ['a full stop after it', (text) => `${text.trim()}. Regards`],
  ])('survives mail: %s', (_, mangle) => {
    expect(decode(mangle(mail(sample)))).toEqual({ ok: true, document: sample });
  });

  it('is never folded before a full stop', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (length) => {
        const word = `claspwise1.${'A'.repeat(length)}.end`;
        const lines = foldCompact(word).split('\n');
        expect(lines.join('')).toBe(word);
        for (const line of lines) expect(line).toMatch(/^[^.].{0,67}$/);
        expect(lines.at(-1)).toMatch(/\.end$/);
      }),
    );
  });

  it('survives a break anywhere in it, its tail included', () => {
    const word = encode(sample);
    const begun = word.indexOf('.') + 1;
    for (let at = begun; at <= word.length; at += 1) {
      for (const wrap of ['\n', '\r\n> ', '<br>\n']) {
        expect(decode(word.slice(0, at) + wrap + word.slice(at))).toEqual({ ok: true, document: sample });
      }
    }
  });

  it('is found as often as it stands there, up to a limit', () => {
    const three = [1, 2, 3].map((quantity) => mail({ ...sample, quantity })).join('\n\nFrom x\n');
    expect(decodeAll(three, 9).map((one) => one.ok && one.document.quantity)).toEqual([1, 2, 3]);
    expect(decodeAll(three, 2)).toHaveLength(2);
  });

  const whole = encode(sample);
  it.each([
    ['', { code: 'no-order' }],
    ['Dear Wren, I would like a bracelet.', { code: 'no-order' }],
    [whole.slice(0, -4), { code: 'cut-off' }],
    [whole.slice(0, 100), { code: 'cut-off' }],
    [whole.replace('claspwise4', 'claspwise5'), { code: 'newer-version', version: 5 }],
    [whole.replace('claspwise4', 'claspwise0'), { code: 'unknown-version', version: 0 }],
    ['claspwise1..end', { code: 'damaged' }],
    ['claspwise1.AAAAAAAA.end', { code: 'damaged' }],
    [whole.replace('.W', '.X'), { code: 'damaged' }],
    // The same values under the other version's name are no order of that version.
    [whole.replace('claspwise4', 'claspwise1'), { code: 'not-an-order' }],
    [`claspwise1.${'A'.repeat(24_001)}.end`, { code: 'too-long' }],
    [withSum('{}'), { code: 'not-an-order' }],
    [withSum('[1]'), { code: 'not-an-order' }],
    [withSum('not json'), { code: 'not-an-order' }],
    [encode({ ...sample, quantity: 0 }), { code: 'not-an-order' }],
  ])('refuses %.40j by name', (text, problem) => {
    expect(decode(text)).toEqual({ ok: false, problem });
  });

  it('finds every single wrong character', () => {
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    fc.assert(
      fc.property(
        fc.integer({ min: 11, max: whole.length - 7 }),
        fc.constantFrom(...alphabet),
        (at, other) => {
          fc.pre(whole.charAt(at) !== other);
          const read = decode(whole.slice(0, at) + other + whole.slice(at + 1));
          expect(read).toEqual({ ok: false, problem: { code: 'damaged' } });
        },
      ),
    );
  });
});

describe('a mailto link', () => {
  it('lets no text add a header', () => {
    const link = mailtoLink(
      'wren@ninepin.example',
      'Order\r\nBcc: all@example.org',
      'a&bcc=x@example.org\nb',
    );
    const url = new URL(link);
    expect(url.pathname).toBe('wren@ninepin.example');
    expect([...url.searchParams.keys()]).toEqual(['subject', 'body']);
    expect(url.searchParams.get('subject')).toBe('Order Bcc: all@example.org');
    expect(url.searchParams.get('body')).toBe('a&bcc=x@example.org\r\nb');
  });
});

/** Any bytes with a right checksum. */
function withSum(json: string): string {
  const body = Buffer.from(json);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(zlibCrc32(body));
  return `claspwise1.${Buffer.concat([body, sum]).toString('base64url')}.end`;
}
