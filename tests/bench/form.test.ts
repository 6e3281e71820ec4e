import { describe, expect, it, vi } from 'vitest';
import { settingsFrom } from '#bench/context/settings.ts';
import { readChange } from '#bench/intake/changeForm.ts';
import { readBytes } from '#bench/http/readBody.ts';
import { readFileForm, readForm } from '#bench/http/readForm.ts';

const form = (text: string) =>
  readChange(new URLSearchParams(text), {
    currency: 'GBP',
    now: '2026-11-25T19:00:00.000Z',
    invoice: () => null,
  });
const changeIn = (text: string) => {
  const read = form(text);
  return read !== null && 'change' in read ? read.change : read;
};
const request = (body: BodyInit, type?: string) =>
  new Request('http://x/', {
    method: 'POST',
    body,
    ...(type === undefined ? {} : { headers: { 'content-type': type } }),
  });

describe('a change’s form', () => {
  it('is read', () => {
    expect(form('version=2&kind=state&state=asked')).toEqual({
      version: 2,
      change: { kind: 'state', state: 'asked' },
      write: null,
    });
    expect(changeIn('version=2&kind=due&on=2026-12-20')).toEqual({ kind: 'due', on: '2026-12-20' });
    expect(changeIn('version=2&kind=due&on=')).toEqual({ kind: 'due', on: null });
    expect(changeIn('version=2&kind=note&text=+a%0D%0Ab+')).toEqual({ kind: 'note', text: 'a\nb' });
    expect(changeIn('version=2&kind=message&message=ready')).toEqual({
      kind: 'message',
      message: 'ready',
    });
    expect(form('version=2&kind=state&state=agreed&reason=+she+rang+&write=agreed')).toEqual({
      version: 2,
      change: { kind: 'state', state: 'agreed', reason: 'she rang' },
      write: 'agreed',
    });
    expect(changeIn('version=2&kind=strike&id=7&reason=twice')).toEqual({
      kind: 'strike',
      id: 7,
      reason: 'twice',
    });
  });

  it('of money is read as people type it', () => {
    expect(changeIn('version=2&kind=paid&sum=64%2C50&day=2026-11-24&way=cash')).toEqual({
      kind: 'payment',
      entered: { kind: 'paid', minor: 6450, currency: 'GBP', day: '2026-11-24', way: 'cash' },
      really: false,
    });
    expect(changeIn('version=2&kind=refunded&sum=%C2%A31&day=2026-11-26&way=card&really=yes')).toMatchObject({
      entered: { kind: 'refunded', minor: 100 },
      really: true,
    });
  });

  it.each([
    ['sum=&day=2026-11-24&way=cash', 'sum-missing'],
    ['sum=lots&day=2026-11-24&way=cash', 'sum-unreadable'],
    ['sum=12&day=24.11.&way=cash', 'day-unreadable'],
    ['sum=12&day=2026-11-27&way=cash', 'day-ahead'],
  ])('of money names what is wrong with %s', (fields, code) => {
    expect(form(`version=2&kind=paid&${fields}`)).toMatchObject({ version: 2, problem: { code } });
  });

  it.each([
    '',
    'kind=state&state=asked',
    'version=0&kind=state&state=asked',
    'version=1.5&kind=state&state=asked',
    'version=x&kind=state&state=asked',
    'version=1&kind=state&state=lost',
    'version=1&kind=due&on=2026-02-30',
    'version=1&kind=due&on=tomorrow',
    'version=1&kind=note&text=+',
    `version=1&kind=note&text=${'x'.repeat(4001)}`,
    'version=1&kind=message&message=spam',
    'version=1&kind=__proto__',
    'version=1&kind=paid&sum=1&day=2026-11-24&way=gold',
    'version=1&kind=strike&id=x&reason=y',
    `version=1&kind=state&state=new&reason=${'x'.repeat(4001)}`,
  ])('that no page sends is refused: %.60s', (text) => {
    expect(form(text)).toBe(null);
  });
});

describe('a form from the bench’s own pages', () => {
  it('is read up to its bounds, and nothing else is', async () => {
    const type = 'application/x-www-form-urlencoded';
    expect((await readForm(request('a=1', type)))?.get('a')).toBe('1');
    expect(await readForm(request('a=1', 'text/plain'))).toBe(null);
    expect(await readForm(request('a'.repeat(200_000), type))).toBe(null);
    expect((await readForm(request('a=%C3%98+50%', type)))?.get('a')).toBe('Ø 50%');
    expect(await readForm(request('a=%D8', type))).toBe(null);
    expect(await readForm(request(Buffer.from('a=\xd8', 'latin1'), type))).toBe(null);
    const files = new FormData();
    files.set('f', new File(['x'.repeat(1000)], 'f'));
    const encoded = new Response(files);
    const multipart = encoded.headers.get('content-type') ?? '';
    const bytes = await encoded.arrayBuffer();
    const whole = await readFileForm(request(bytes, multipart), 5000);
    expect(whole instanceof FormData && whole.get('f')).toBeInstanceOf(Blob);
    expect(await readFileForm(request(bytes, multipart), 500)).toEqual({
      code: 'upload-too-large',
      status: 413,
    });
    for (const type of ['multipart/form-data; boundary=b', 'multipart/form-data', 'text/plain']) {
      expect(await readFileForm(request('broken', type), 500)).toEqual({
        code: 'upload-broken',
        status: 400,
      });
    }
  });
});

it('an upload that breaks off is one line in the log, and nothing is thrown', async () => {
  const lines: unknown[] = [];
  const log = vi.spyOn(process.stderr, 'write').mockImplementation((line) => lines.push(line) > 0);
  const body = new ReadableStream<Uint8Array>({
    start: (controller) => controller.enqueue(new Uint8Array(7)),
    pull: (controller) => controller.error(new Error('aborted')),
  });
  const broken = new Request('http://x/', { method: 'POST', body, duplex: 'half' } as RequestInit);
  expect(await readBytes(broken, 100)).toBe(null);
  expect(lines).toEqual(['An upload was broken off by its sender after 7 bytes.\n']);
  log.mockRestore();
});

describe('the settings', () => {
  it('are right for one maker where nothing is set', () => {
    expect(settingsFrom({}, '/shop')).toEqual({
      bookFile: '/shop/.book/orders.sqlite',
      hosts: [],
      shopOrigins: [],
      proxies: [],
      deskPerMinute: 20,
      tabletPort: 4343,
    });
  });

  it('are read from the environment, and refused by name', () => {
    const set = {
      CLASPWISE_HOSTS: 'Bench.example, b.example',
      CLASPWISE_SHOP_ORIGINS: 'https://shop.example/x',
      CLASPWISE_PROXIES: '127.0.0.1, 2001:db8::7',
    };
    expect(settingsFrom(set, '/')).toMatchObject({
      hosts: ['bench.example', 'b.example'],
      shopOrigins: ['https://shop.example'],
      proxies: ['127.0.0.1', '2001:db8::7'],
    });
    expect(() => settingsFrom({ CLASPWISE_PROXIES: 'proxy.example' }, '/')).toThrow(
      'CLASPWISE_PROXIES: got "proxy.example"',
    );
    expect(() => settingsFrom({ CLASPWISE_SHOP_ORIGINS: 'shop' }, '/')).toThrow(
      'CLASPWISE_SHOP_ORIGINS: got "shop"',
    );
    expect(() => settingsFrom({ CLASPWISE_DESK_PER_MINUTE: 'many' }, '/')).toThrow(
      'CLASPWISE_DESK_PER_MINUTE',
    );
  });
});
