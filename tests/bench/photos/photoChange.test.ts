import { describe, expect, test } from 'vitest';
import { listAfter } from '#bench/photos/photoChange.ts';
import { photosOf } from '#bench/photos/photoList.ts';
import { readCrop, writeCrop } from '#catalogue/model/crop.ts';

const LIST = ['a', 'b', 'c'].map((name) => ({ file: `${name}.jpeg`, alt: name, note: 'hers' }));
const after = (fields: Record<string, string>) =>
  listAfter(LIST, new URLSearchParams(fields), { width: 400, height: 200 });
const filesAfter = (fields: Record<string, string>): unknown => {
  const listed = after(fields);
  return listed.ok ? listed.pictures.map(({ file }) => file) : listed.problem.code;
};

describe('a form of a photograph', () => {
  test('moves it, and leaves it at an end where it stands there', () => {
    expect(filesAfter({ do: 'earlier', at: '2' })).toEqual(['a.jpeg', 'c.jpeg', 'b.jpeg']);
    expect(filesAfter({ do: 'later', at: '0' })).toEqual(['b.jpeg', 'a.jpeg', 'c.jpeg']);
    expect(filesAfter({ do: 'earlier', at: '0' })).toEqual(['a.jpeg', 'b.jpeg', 'c.jpeg']);
  });

  test('takes it away', () => expect(filesAfter({ do: 'remove', at: '1' })).toEqual(['a.jpeg', 'c.jpeg']));

  test('describes it, and keeps fields that are the maker’s own', () => {
    const listed = after({ do: 'words', at: '1', alt: ' On slate. ', 'alt-de': 'Auf Schiefer.' });
    expect(listed.ok && listed.pictures[1]).toEqual({
      ...{ file: 'b.jpeg', alt: 'On slate.', 'alt-de': 'Auf Schiefer.', note: 'hers' },
    });
    expect(filesAfter({ do: 'words', at: '1', alt: '  ' })).toBe('alt-missing');
  });

  test('shows a part, by numbers or by a frame, and all of it again', () => {
    const cropAfter = (fields: Record<string, string>): unknown => {
      const listed = after({ do: 'crop', at: '0', ...fields });
      return listed.ok ? listed.pictures[0]?.crop : listed.problem.code;
    };
    expect(cropAfter({ left: '10', top: '0', width: '80,5', height: '100' })).toBe('10% 0% 80.5% 100%');
    expect(cropAfter({ left: '0', top: '0', width: '100', height: '100' })).toBeUndefined();
    expect(cropAfter({ left: '30', top: '0', width: '80', height: '100' })).toBe('crop-unreadable');
    expect(cropAfter({ left: '', top: '', width: '', height: '' })).toBe('crop-unreadable');
    expect(cropAfter({ frame: 'square' })).toBe('25% 0% 50% 100%');
    expect(cropAfter({ frame: 'whole' })).toBeUndefined();
  });

  test.each([
    { do: 'remove', at: '3' },
    { do: 'remove', at: 'x' },
    { do: 'burn', at: '0' },
  ])('is refused where it asks for what isn’t there: %o', (fields) =>
    expect(filesAfter(fields)).toBe('no-such-photo'),
  );
});

test('names that lead out of the content lead nowhere', () => {
  const data = {
    pictures: ['../../x.jpg', '/x.jpg', 'a\\x.jpg', '', 'x.jpg'].map((file) => ({ file, alt: 'x' })),
  };
  const paths = photosOf({ data, file: 'pieces/row.yaml' }).map(({ path }) => path);
  expect(paths).toEqual([null, null, null, null, 'pieces/x.jpg']);
});

test('a part is read as it was written', () => {
  expect(readCrop('12.5% 0% 50% 87.5%')).toEqual({ left: 0.125, top: 0, width: 0.5, height: 0.875 });
  expect(writeCrop({ left: 1 / 3, top: 0, width: 2 / 3, height: 1 })).toBe('33.3% 0% 66.7% 100%');
  for (const wrong of ['', '10%', '0% 0% 0% 100%', '60% 0% 50% 100%', '-1% 0% 50% 50%', '1 1 50 50']) {
    expect(readCrop(wrong)).toBeNull();
  }
});
