/** Plain e-mails as buyers send them: read as far as they go, with what couldn't be read named. */
import { describe, expect, it } from 'vitest';
import { looksPlain, readPlain, type PlainOrder } from '#bench/intake/plainMail.ts';
import { isSource, messageText } from '#bench/intake/plainText.ts';
import { takeIn } from '#bench/intake/takeIn.ts';
import { plainMailWords } from '#words/words.ts';
import type { Lang } from '#words/lang.ts';
import { wrappedMessages, wrappedTexts } from './wrapped.ts';
import { catalogue, openShop } from '../shop.ts';

const piece = catalogue.pieces.find(({ id }) => id === 'weir-light')!;
const desk = {
  pieces: catalogue.pieces,
  shopEmail: 'orders@ninepin.example',
  unit: 'in',
  lang: 'en',
} as const;
const read = (text: string): PlainOrder => readPlain(text, desk);
const codes = ({ remarks }: PlainOrder): string[] => remarks.map(({ code }) => code);
/** What nobody says in such a mail. */
const ASSUMED = ['quantity', 'sit'];

/** The mail as the piece's page offers it. */
function offered(lang: Lang = 'en', size = lang === 'en' ? '6½ in (165 mm)' : '16,5 cm (165 mm)'): string {
  const args = { name: piece.name, revision: `${piece.id} ${piece.revision}`, size };
  return plainMailWords(lang).body({ ...args, comesOut: '7 in (178 mm)', price: '£38.00' });
}
/** The same, filled in. */
const filled = offered()
  .replace('right / left', 'left')
  .replace('My name:', 'My name: Zoë Quill')
  .replace('Send it to:', 'Send it to: 3 Mill Lane, Tenterholm TE1 2XY')
  .concat('\nIt is for my sister, by Easter if you can.\n\nZoë\n');
const WHOLE = {
  ...{ piece: 'weir-light', size: '6½ in', hand: 'left', name: 'Zoë Quill', way: 'mail', lang: 'en' },
  ...{ delivery: 'post', line1: '3 Mill Lane', town: 'Tenterholm', postcode: 'TE1 2XY' },
};
const from = (text: string): string => `From: Zoë Quill <zoe@example.org>\nSubject: Order\n\n${text}`;
const wrapped = (text: string): string => text.replace(/(.{30,60}) /g, '$1\n');

describe('a mail as it is offered', () => {
  it.each(['en', 'de'] as const)(
    'in %s: no code in what she reads of her wish, and no note of hers',
    (lang) => {
      const [wish = ''] = offered(lang)
        .split('\n')
        .filter((line) => line.includes(piece.name));
      expect(wish).not.toContain(piece.revision);
      expect(wish).not.toContain('(');
      expect(read(offered(lang)).fields.note ?? '').toBe('');
      expect(read(offered(lang)).fields.piece).toBe('weir-light');
    },
  );

  it('written before the code stood on a line of its own is read alike', () => {
    const before = offered()
      .replace(/For the maker, please leave this line: \((.*)\)\n\n/, '')
      .replace('Weir Light.', `Weir Light (${piece.id} ${piece.revision}).`);
    expect(read(before)).toMatchObject({ fields: { ...read(offered()).fields, mail: before } });
  });
});

describe('a mail filled in', () => {
  it.each<[string, string]>([
    ['as it is', from(filled)],
    ['with Windows line ends', from(filled).replace(/\n/g, '\r\n')],
    ['quoted', from(filled).replace(/^/gm, '> ')],
    ['quoted twice', from(filled).replace(/^/gm, '>> ')],
    [
      'forwarded by the maker to herself',
      `From: Wren <orders@ninepin.example>\nSubject: Fwd: Order\n\n---------- Forwarded message ---------\n${from(filled).replace(/^/gm, '> ')}`,
    ],
    [
      'in capitals and bold',
      from(filled).replace(/^([A-Z][\w ]+):/gm, (_, label: string) => `*${label.toUpperCase()}:*`),
    ],
    ['with equal signs for colons', from(filled).replace(/^(Size|My name):/gm, '$1 =')],
    [
      'with spaces that can’t be seen',
      from(filled).replaceAll(' in', '\u00a0in').replaceAll('Size', '\u200bSize'),
    ],
  ])('%s', (_, text) => {
    const order = read(text);
    expect(order.fields).toMatchObject({ ...WHOLE, email: 'zoe@example.org' });
    expect(codes(order)).toEqual(['address', ...ASSUMED]);
    expect(order.fields.note).toBe('It is for my sister, by Easter if you can.\n\nZoë');
    expect(looksPlain(text)).toBe(true);
  });

  it('in long lines that were broken on the way', () => {
    const order = read(from(wrapped(filled)));
    expect(order.fields).toMatchObject({ piece: 'weir-light', size: '6½ in', email: 'zoe@example.org' });
    expect(order.fields.note).not.toContain('I should like');
  });

  it('in German', () => {
    const german = offered('de')
      .replace('rechts / links', 'links')
      .replace('Mein Name:', 'Mein Name:\nJörg Öhm')
      .replace('Lieferadresse:', 'Lieferadresse:\nJörg Öhm\nMühlgasse 4\n04109 Leipzig\nDeutschland');
    const order = read(`Von: Jörg <joerg@example.org>\n\n${german}`);
    expect(order.fields).toMatchObject({
      ...{ piece: 'weir-light', size: '16,5 cm', hand: 'left', name: 'Jörg Öhm', lang: 'de', note: '' },
      ...{ line1: 'Mühlgasse 4', postcode: '04109', town: 'Leipzig', country: 'DE' },
      email: 'joerg@example.org',
    });
  });

  it('as a message’s source, in quoted-printable, base64 and HTML', async () => {
    const head =
      'From: =?utf-8?Q?Zo=C3=AB_Quill?= <zoe@example.org>\r\nTo: orders@ninepin.example\r\nSubject: Order\r\nMIME-Version: 1.0\r\n';
    const utf8 = Buffer.from(filled.replace(/\n/g, '\r\n'));
    const qp = [...utf8]
      .map((byte) =>
        (byte >= 32 && byte < 127 && byte !== 61) || byte === 13 || byte === 10
          ? String.fromCharCode(byte)
          : `=${byte.toString(16).toUpperCase().padStart(2, '0')}`,
      )
      .join('')
      .replace(/([^\r\n]{60})(?=[^\r\n=]{3})/g, '$1=\r\n');
    const html = `<html><head><style>p{color:red}</style></head><body>${filled
      .split('\n')
      .map((line) => `<div>${line.replace('½', '&frac12;').replace('ë', '&#235;')}<br></div>`)
      .join('')}</body></html>`.replaceAll('&frac12;', '&#189;');
    const sources = [
      `${head}Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n${qp}`,
      `${head}Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n${utf8.toString('base64')}`,
      `${head}Content-Type: text/html; charset=utf-8\r\n\r\n${html}`,
    ];
    for (const source of sources) {
      expect(isSource(source.replaceAll('\r\n', '\n'))).toBe(true);
      const text = await messageText(Buffer.from(source));
      expect(read(text ?? '').fields).toMatchObject({ ...WHOLE, email: 'zoe@example.org' });
    }
    // The body alone, copied as it travelled.
    expect(read(qp.replaceAll('\r\n', '\n')).fields).toMatchObject(WHOLE);
  });
});

describe('a mail that buyers have changed', () => {
  it('sent as it was offered lacks hand, name and address', () => {
    const order = read(offered());
    expect(order.fields).toMatchObject({
      piece: 'weir-light',
      size: '6½ in',
      name: '',
      email: '',
      delivery: 'unsaid',
    });
    expect(codes(order)).toEqual(['hand', 'name', 'email', ...ASSUMED]);
  });

  it.each<[string, string]>([
    ['left', 'left'],
    ['LEFT please', 'left'],
    ['my left hand', 'left'],
    ['right', 'right'],
  ])('says which hand: %s', (said, hand) => {
    expect(read(offered().replace('right / left', said)).fields.hand).toBe(hand);
  });

  it('names a size that was changed in one place and not in the other', () => {
    const order = read(offered('en', '7 in (165 mm)'));
    expect(order.fields.size).toBe('7 in');
    expect(order.remarks).toContainEqual({ code: 'two-sizes', first: '7 in', second: '165 mm' });
  });

  it.each([
    ['Size: 17 cm please', '17 cm'],
    ['Size: about 6 3/4 inches', '6 3/4 inches'],
    ['My wrist measures 16,5 cm.', '16,5 cm'],
  ])('finds the size in “%s”', (line, size) => {
    expect(read(offered().replace(/^Size:.*$/m, line)).fields.size).toBe(size);
  });

  it('says so where there is no size, or no piece', () => {
    expect(codes(read(offered().replace(/^Size:.*\n/m, '')))).toContain('size');
    const letter = read('Dear Wren, have you any blue ones?\nIris <iris@example.org>');
    expect(codes(letter)).toEqual(['piece', 'size', 'hand', 'name', ...ASSUMED]);
    expect(letter.fields).toMatchObject({
      email: 'iris@example.org',
      note: 'Dear Wren, have you any blue ones?\nIris <iris@example.org>',
    });
    expect(looksPlain('Dear Wren, have you any blue ones?')).toBe(false);
  });

  it('knows the piece by its name where its mark is gone, and an old revision', () => {
    expect(read('I want the Weir   Light, 165 mm').fields).toMatchObject({
      piece: 'weir-light',
      size: '165 mm',
    });
    const old = offered().replace(piece.revision, '0123456789ab');
    expect(codes(read(old))).toContain('revision');
  });

  it.each([
    ['I will collect it', 'collection', ''],
    ['9 Collier Row, Leeds LS1 4AP, United Kingdom', 'post', '9 Collier Row'],
  ])('tells who comes for it from an address: “%s”', (said, delivery, line1) => {
    const { fields } = read(offered().replace('Send it to:', `Send it to: ${said}`));
    expect(fields).toMatchObject({ delivery, line1 });
  });

  it('never takes the shop for the buyer', () => {
    const reply = `From: orders@ninepin.example\n\n${offered()}\nwrite to me: iris@example.org`;
    expect(read(reply).fields.email).toBe('iris@example.org');
  });
});

it('whatever is pasted, nothing is thrown', () => {
  let seed = 7;
  const next = (): number => (seed = (seed * 48271) % 2147483647);
  const bits = [
    ...filled,
    '\n',
    ':',
    '=',
    '(',
    ')',
    '> ',
    '<',
    '@',
    '\u202e',
    'Size:',
    'From:',
    '='.repeat(50),
  ];
  for (let run = 0; run < 200; run += 1) {
    const text = Array.from({ length: 400 }, () => bits[next() % bits.length]).join('');
    expect(read(text).fields.way).toBe('mail');
  }
  for (const long of ['(', 'Size:', '> ', 'a@', '1 ', '=', '<', '-- \n'].map((one) => one.repeat(20_000))) {
    expect(read(long).fields.way).toBe('mail');
    looksPlain(long);
  }
});

it('such a mail is offered to the form when it is taken in, by text, file or mailbox', async () => {
  const shop = openShop(catalogue);
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  const source = `From: zoe@example.org\r\nSubject: Order\r\nMIME-Version: 1.0\r\nContent-Type: text/plain; charset=utf-8\r\n\r\n${filled.replace(/\n/g, '\r\n')}`;
  const arrived = await takeIn(
    [
      { source: 'text', way: 'paste', bytes: bytes(filled) },
      { source: 'mail.eml', way: 'file', bytes: bytes(source) },
      { source: 'box', way: 'file', bytes: bytes(`From MAILER Wed Nov 25 19:00:00 2026\r\n${source}\r\n`) },
    ],
    { inbox: shop.desk.inbox(), pieceNow: shop.desk.pieceNow, at: '2026-11-25T19:00:00.000Z' },
  );
  shop.close();
  expect(arrived.map((one) => one.code === 'refused' && one.why.code)).toEqual(['plain', 'plain', 'plain']);
  for (const one of arrived) {
    const text = one.code === 'refused' && one.why.code === 'plain' ? one.why.text : '';
    expect(read(text).fields).toMatchObject(WHOLE);
  }
});

it('such a mail is read out of every wrapping that mail programs put round it', async () => {
  const shop = openShop(catalogue);
  const wrapped = [
    ...Object.entries(wrappedMessages(filled)).map(
      ([name, text]) => [`${name}.eml`, Buffer.from(text)] as const,
    ),
    ...Object.entries(wrappedTexts(filled)),
  ];
  const arrived = await takeIn(
    wrapped.map(([source, bytes]) => ({ source, way: 'file', bytes })),
    { inbox: shop.desk.inbox(), pieceNow: shop.desk.pieceNow, at: '2026-11-25T19:00:00.000Z' },
  );
  shop.close();
  expect(arrived.map(({ source }) => source)).toEqual(wrapped.map(([source]) => source));
  for (const one of arrived) {
    const text = one.code === 'refused' && one.why.code === 'plain' ? one.why.text : '';
    expect({ from: one.source, ...read(text).fields }).toMatchObject({ from: one.source, ...WHOLE });
    expect(read(text).fields.note, one.source).toContain('It is for my sister, by Easter if you can.');
  }
});

it('says of an empty form that nothing was pasted, and no more', () => {
  expect(codes(read(' \n'))).toEqual(['empty']);
});

describe('a mail for something else than the listed piece to measure', () => {
  const mailFor = (id: string, size: string): string => {
    const one = catalogue.pieces.find((other) => other.id === id)!;
    const args = { name: one.name, revision: `${one.id} ${one.revision}`, size };
    return from(plainMailWords('en').body({ ...args, comesOut: '18 in (457 mm)', price: '£142.00' }));
  };

  it('is read as the one that lies there, and neither size nor hand is missed', () => {
    const order = read(mailFor('first-frost', 'as it lies there'));
    expect(order.fields).toMatchObject({ piece: 'first-frost', made: 'ready', size: '' });
    expect(codes(order)).not.toEqual(expect.arrayContaining(['size']));
    expect(codes(order)).not.toContain('hand');
    expect(codes(order)).not.toContain('sit');
  });

  it('has the parts that it names, where it names one', () => {
    const text = mailFor('wash-day', '18 in (457 mm)');
    expect(read(`${text}\nWith the Scour slate drop please.`).fields).toMatchObject({
      made: 'to-measure',
      pendant: 'slate-drop-34',
      clasp: '',
    });
    expect(read(`${text}\nMit Scour-Schiefertropfen.`).fields.pendant).toBe('slate-drop-34');
    expect(read(`${text}\nThe Scour slate drop or the grey pearl drop?`).fields.pendant).toBe('');
  });
});
