import { describe, expect, it } from 'vitest';
import { settingsFrom } from '#bench/context/settings.ts';
import { readChange } from '#bench/intake/changeForm.ts';
import { readFileForm, readForm } from '#bench/http/readForm.ts';

const form = (text: string) => readChange(new URLSearchParams(text));
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
    });
    expect(form('version=2&kind=due&on=2026-12-20')?.change).toEqual({ kind: 'due', on: '2026-12-20' });
    expect(form('version=2&kind=due&on=')?.change).toEqual({ kind: 'due', on: null });
    expect(form('version=2&kind=note&text=+a%0D%0Ab+')?.change).toEqual({ kind: 'note', text: 'a\nb' });
    expect(form('version=2&kind=message&message=ready')?.change).toEqual({
      kind: 'message',
      message: 'ready',
    });
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
    const files = new FormData();
    files.set('f', new File(['x'.repeat(1000)], 'f'));
    const encoded = new Response(files);
    const multipart = encoded.headers.get('content-type') ?? '';
    const bytes = await encoded.arrayBuffer();
    expect((await readFileForm(request(bytes, multipart), 5000))?.get('f')).toBeInstanceOf(Blob);
    expect(await readFileForm(request(bytes, multipart), 500)).toBe(null);
    expect(await readFileForm(request('broken', 'multipart/form-data; boundary=b'), 500)).toBe(null);
  });
});

describe('the settings', () => {
  it('are right for one maker where nothing is set', () => {
    expect(settingsFrom({}, '/shop')).toEqual({
      bookFile: '/shop/.book/orders.sqlite',
      hosts: [],
      shopOrigins: [],
      deskPerMinute: 20,
    });
  });

  it('are read from the environment, and refused by name', () => {
    const set = {
      CLASPWISE_HOSTS: 'Bench.example, b.example',
      CLASPWISE_SHOP_ORIGINS: 'https://shop.example/x',
    };
    expect(settingsFrom(set, '/')).toMatchObject({
      hosts: ['bench.example', 'b.example'],
      shopOrigins: ['https://shop.example'],
    });
    expect(() => settingsFrom({ CLASPWISE_SHOP_ORIGINS: 'shop' }, '/')).toThrow(
      'CLASPWISE_SHOP_ORIGINS: got "shop"',
    );
    expect(() => settingsFrom({ CLASPWISE_DESK_PER_MINUTE: 'many' }, '/')).toThrow(
      'CLASPWISE_DESK_PER_MINUTE',
    );
  });
});
