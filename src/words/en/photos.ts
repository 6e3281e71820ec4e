/** Photographs of a piece, as the maker reads of them at the bench. */
import type { Format } from '../format.ts';
import type { PhotoTrouble } from '../photoCodes.ts';
import type { Sentences } from '../sentence.ts';

const kinds = {
  drawing: 'This file is a drawing (SVG)',
  document: 'This file is a document (PDF)',
  archive: 'This file is a packed folder, whatever its name says',
  film: 'This file is a film',
  unknown: 'This file is no photograph that can be read here',
};

const troubles: Sentences<PhotoTrouble> = {
  'photo-missing': () => 'No photograph was chosen, or its file is empty. Choose one.',
  'photo-broken': () =>
    'This photograph is damaged, or only a part of it arrived. Copy it from the camera or the telephone again.',
  'photo-moves': () => 'This picture moves. Choose a still one: on a telephone, take a photograph instead.',
  'photo-kind': ({ kind }) => `${kinds[kind]}. Choose a JPEG, PNG, WebP, AVIF or HEIC photograph.`,
  'photo-pixels': ({ megapixels, most }, f) =>
    `This picture has ${f.number(megapixels)} megapixels, and ${f.number(most)} are the most. Save a smaller copy and choose that.`,
  'photo-small': ({ width, height, least }, f) =>
    `This picture is only ${f.number(width)} × ${f.number(height)} points large. Its longer side needs ${f.number(least)} at least; choose the photograph itself, not a small copy.`,
  'photo-too-large': ({ mostMb }, f) =>
    `The file is larger than ${f.number(mostMb)} MB. Save a smaller copy and choose that.`,
  'alt-missing': () =>
    'Say what the photograph shows: somebody who can’t see it hears these words instead. Then choose the photograph again, if it is a new one.',
  'crop-unreadable': () =>
    'The part to show must lie within the photograph. Write percentages: from the left, from the top, width and height.',
  'no-such-photo': () => 'This photograph isn’t on the page any more. Nothing was changed.',
  'photo-changed-meanwhile': () =>
    'The piece was changed in another window. Nothing was overwritten: look at it as it is now, then do it again.',
  'photo-not-writable': () =>
    'The files couldn’t be written. Nothing was changed. Make room on the disk, or check the rights of the content folder.',
  'photo-problems': () => 'The piece can’t be saved like this. Nothing was changed.',
};

export const photos = {
  title: (piece: string): string => `Photographs of ${piece}`,
  none: 'No photograph yet: the shop shows the drawing.',
  first: 'Buyers see the first one in lists and at the head of its page.',
  add: 'Add a photograph',
  choose: 'Photograph',
  hint: 'Choose it, drop it anywhere on this page, or take it with the telephone. It is turned upright, and where and with what it was taken is left out.',
  alt: 'What it shows, for somebody who can’t see it',
  altDe: 'The same in German',
  altHint: 'For example: the bracelet lies on grey slate, its clasp to the left.',
  upload: 'Put it with the piece',
  sending: 'On its way',
  saveWords: 'Save the words',
  place: (at: number, of: number): string => `Photograph ${at} of ${of}`,
  earlier: 'Move forward',
  later: 'Move back',
  remove: 'Take it away',
  removeHint: 'Its file stays in the content folder, so that the history can bring it back.',
  crop: 'Show only a part',
  cropHint: 'Draw over the photograph, or write percentages of it.',
  parts: { left: 'From the left, %', top: 'From the top, %', width: 'Width, %', height: 'Height, %' },
  saveCrop: 'Show this part',
  frames: { whole: 'All of it', square: 'Square in the middle', middle: 'A little closer' },
  fileGone: (file: string): string =>
    `The file “${file}” isn’t there or can’t be read. Put it back, or take the photograph away.`,
  trouble: troubles,
  size: (width: number, height: number, f: Format): string =>
    `${f.number(width)} × ${f.number(height)} points`,
};
