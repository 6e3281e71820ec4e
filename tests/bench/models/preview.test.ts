import { describe, expect, test } from 'vitest';
import { guardHeaders } from '#bench/access/headers.ts';
import { amongPreviews, asPreview, isPreview } from '#bench/access/previewPage.ts';
import { typedChange } from '#bench/models/content/editEntry.ts';
import { previewFront, previewGuide, previewPiece, readingMark } from '#bench/models/preview.ts';
import { readingWithBoard } from '#bench/saveBoard.ts';
import { findPicture } from '#ui/pictures/find.ts';
import { pictureFiles } from '#ui/pictures/files.ts';
import { keptContent } from '#tests/bench/content.ts';
import { catalogue, frame, NOW_MS } from '#tests/bench/shop.ts';

const ROW = { id: 'row', file: 'pieces/row.yaml', lang: 'en' } as const;

describe('a preview', () => {
  test('shows what lies in the files at this moment', () => {
    const { store } = keptContent();
    const opened = store.open({ kind: 'piece', id: 'row' });
    if (opened === null) throw new Error('no row');
    const before = readingMark(store.reading());
    expect(readingMark(store.reading())).toBe(before);
    expect(store.save(opened, [{ path: ['name'], value: 'Hedge' }]).ok).toBe(true);
    expect(readingMark(store.reading())).not.toBe(before);
    const result = previewPiece(store.reading(), ROW, []);
    expect(result.kind === 'page' && result.page.piece.name).toBe('Hedge');
  });

  test('sends orders nowhere that keeps them', () => {
    const reading = { catalogue, problems: [], notes: [] };
    const id = catalogue.pieces[0]?.id ?? '';
    const result = previewPiece(reading, { ...ROW, id }, []);
    expect(result.kind === 'page' && result.page.frame.shop.orders).toMatchObject({
      desk: '/bench/preview/orders/',
      form: null,
    });
  });

  test('tells what keeps a piece from being shown, and of none that isn’t there', () => {
    const { store } = keptContent([{ file: ROW.file, from: 'kind: bracelet', to: 'kind: hat' }]);
    const result = previewPiece(store.reading(), ROW, []);
    expect(result.kind === 'problems' && result.problems.map(({ file, field }) => [file, field])).toEqual([
      [ROW.file, 'kind'],
    ]);
    expect(previewPiece(store.reading(), { ...ROW, id: 'no', file: null }, [])).toEqual({ kind: 'none' });
  });
});

describe('of what isn’t saved', () => {
  test('a form as it stands is shown, and nothing of it reaches the file', () => {
    const kept = keptContent();
    const key = { kind: 'piece', id: 'row' } as const;
    const opened = kept.store.open(key);
    if (opened === null) throw new Error('no row');
    const before = kept.textOf(ROW.file);
    const posted = new URLSearchParams({ name: 'Hedge', digest: opened.digest });
    const { changes, body } = typedChange(posted, opened, frame);
    const reading = kept.store.readingWith(key, changes, body);
    const result = reading && previewPiece(reading, ROW, []);
    expect(result?.kind === 'page' && result.page.piece.name).toBe('Hedge');
    expect(kept.textOf(ROW.file)).toBe(before);
    expect(previewPiece(kept.store.reading(), ROW, [])).toMatchObject({ page: { piece: { name: 'Row' } } });
  });

  test('the board as it lies, of a piece with a file and of one without', () => {
    const kept = keptContent();
    const { catalogue: own } = kept.store.reading();
    const piece = own?.pieces.find(({ id }) => id === 'row');
    if (own === null || piece === undefined) throw new Error('no row');
    const { design } = piece;
    const kind = design.kind === 'bracelet' ? 'anklet' : 'bracelet';
    const board = { digest: 'any', design: { ...design, kind }, about: null } as const;
    const there = previewPiece(readingWithBoard(kept.store, own, board, NOW_MS), ROW, []);
    expect(there.kind === 'page' && there.page.piece.design.kind).toBe(kind);
    const about = { name: 'Quick', price: '30', summary: 'Six in a row.', story: '' };
    const fresh = { digest: null, design: { ...design, id: 'quick' }, about };
    const asked = { id: 'quick', file: 'pieces/quick.yaml', lang: 'en' } as const;
    const isNew = previewPiece(readingWithBoard(kept.store, own, fresh, NOW_MS), asked, []);
    expect(isNew.kind === 'page' && isNew.page.piece.name).toBe('Quick');
    expect(kept.store.open({ kind: 'piece', id: 'quick' })).toBeNull();
    const nameless = { ...fresh, about: { ...about, name: '' } };
    const broken = previewPiece(readingWithBoard(kept.store, own, nameless, NOW_MS), asked, []);
    expect(broken.kind === 'problems' && broken.problems.map(({ field }) => field)).toEqual(['name']);
  });
});

test('a guide and the front page are shown from the files, or what keeps them from it', () => {
  const reading = { catalogue, problems: [], notes: [] };
  const guide = previewGuide(reading, { id: 'care', lang: 'de', file: 'guides/de/care.md' });
  expect(guide.kind === 'page' && guide.page.guide.lang).toBe('de');
  expect(previewGuide(reading, { id: 'none', lang: 'de', file: null })).toEqual({ kind: 'none' });
  const wrong = {
    file: 'guides/de/care.md',
    line: 3,
    field: '',
    error: { code: 'html-in-guide', tag: '<b>' },
  } as const;
  const asked = { id: 'care', lang: 'de', file: 'guides/de/care.md' } as const;
  expect(previewGuide({ ...reading, problems: [wrong] }, asked).kind).toBe('problems');
  const front = previewFront(reading, 'en', []);
  expect(front.kind === 'page' && front.page.pieces.length).toBe(catalogue.pieces.length);
  expect(previewFront({ catalogue: null, problems: [wrong], notes: [] }, 'en', []).kind).toBe('problems');
});

describe('the page of a preview', () => {
  test('has its pictures and pieces from the bench, and other links as they are', () => {
    const html =
      '<a href="/de/pieces/a-b/#size"></a><a href="/pieces/"></a><a class="x" href="/de/"></a><a href="/guides/care/"></a><link href="/"><img srcset="/pictures/a.webp 1w, /pictures/b.webp 2w"><img src="/de/pieces/a-b/worn.svg"><i data-props="{&quot;/pictures/c.svg&quot;}">';
    expect(amongPreviews(html)).toBe(
      '<a href="/bench/preview/de/pieces/a-b/#size"></a><a href="/pieces/"></a><a class="x" href="/bench/preview/de/"></a><a href="/bench/preview/guides/care/"></a><link href="/"><img srcset="/bench/preview/pictures/a.webp 1w, /bench/preview/pictures/b.webp 2w"><img src="/bench/preview/de/pieces/a-b/worn.svg"><i data-props="{&quot;/bench/preview/pictures/c.svg&quot;}">',
    );
  });

  test('leaves what is no page alone', async () => {
    const picture = new Response('"/pictures/x"', { headers: { 'content-type': 'image/svg+xml' } });
    expect(await asPreview(picture)).toBe(picture);
  });

  test('keeps the policy of its scripts, and is held by no other page; all else has the bench’s', () => {
    const policyOf = (path: string, own: string | null): string | null => {
      const headers = new Headers(own === null ? {} : { 'content-security-policy': own });
      guardHeaders(headers, path, true);
      return headers.get('content-security-policy');
    };
    const own = "default-src 'self'; script-src 'sha256-x';";
    expect(policyOf('/bench/preview/pieces/row/', own)).toBe(
      "default-src 'self'; script-src 'sha256-x'; frame-ancestors 'none'",
    );
    expect(policyOf('/bench/preview/pieces/row/', null)).toContain("default-src 'none'");
    expect(policyOf('/bench/pieces/row/', own)).toContain("default-src 'none'");
    expect(isPreview('/bench/previews')).toBe(false);
  });
});

test('every picture file is found by its name alone', async () => {
  const pieces = catalogue.pieces.slice(0, 4);
  const files = await pictureFiles(pieces, catalogue.shop, false);
  const found = await Promise.all(files.map(({ name }) => findPicture(pieces, catalogue.shop, name)));
  expect(found.map((file) => file?.name)).toEqual(files.map(({ name }) => name));
  expect(await findPicture(pieces, catalogue.shop, 'no-such.svg')).toBeNull();
});
