/** A piece's photographs: added, described, cut, put in order, taken away. */
import { underBase } from '#ui/site/base.ts';
import { photoWords } from '#words/words.ts';
import type { PhotoSheet } from '../../models/photoSheet.ts';
import { PhotoCard } from './PhotoCard.tsx';
import { Trouble, WordFields } from './PhotoParts.tsx';

type Props = { readonly sheet: PhotoSheet };

export function PhotosView({ sheet }: Props) {
  const { photos, frame } = sheet;
  const words = photoWords(frame.lang);
  return (
    <>
      <p class="quiet">{photos.length === 0 ? words.none : words.first}</p>
      {photos.map((_, at) => (
        <PhotoCard sheet={sheet} at={at} />
      ))}
      <AddForm sheet={sheet} />
    </>
  );
}

function AddForm({ sheet }: Props) {
  const { id, digest, attempt, frame } = sheet;
  const words = photoWords(frame.lang);
  const typed = (name: string): string => (attempt?.of === 'new' ? (attempt.form.get(name) ?? '') : '');
  return (
    <section aria-labelledby="add">
      <h2 id="add">{words.add}</h2>
      <Trouble sheet={sheet} of="new" />
      <form
        method="post"
        action={underBase(`/bench/pieces/${id}/photos/`)}
        encType="multipart/form-data"
        class="photo-form"
        data-drop
        data-progress
      >
        <input type="hidden" name="digest" value={digest} />
        <p class="quiet">{words.hint}</p>
        <label>
          {words.choose}
          <input type="file" name="photo" accept="image/*,.heic,.heif" required />
        </label>
        <WordFields words={words} alt={typed('alt')} altDe={typed('alt-de')} />
        <button type="submit" class="main">
          {words.upload}
        </button>
        <p hidden data-sending role="status">
          {words.sending} <progress max={1} value={0} aria-label={words.sending}></progress>
        </p>
      </form>
    </section>
  );
}
