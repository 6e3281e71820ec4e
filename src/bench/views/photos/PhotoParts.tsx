/** Parts that all forms of photographs have in common. */
import { sentenceOf } from '#words/sentence.ts';
import { photoWords } from '#words/words.ts';
import type { PhotoSheet } from '../../models/photoSheet.ts';
import { ProblemList } from '../ProblemList.tsx';

type Props = { readonly sheet: PhotoSheet };

/** What was wrong, above the form that it was wrong in. */
export function Trouble({ sheet, of }: Props & { readonly of: number | 'new' }) {
  const { attempt, frame } = sheet;
  if (attempt?.of !== of) return null;
  const { trouble } = attempt;
  return (
    <div class="warning" role="alert" data-trouble>
      <p>{sentenceOf(photoWords(frame.lang).trouble, trouble, frame.format)}</p>
      {trouble.code === 'photo-problems' && <ProblemList problems={trouble.problems} lang={frame.lang} />}
    </div>
  );
}

type WordsOf = ReturnType<typeof photoWords>;

export function WordFields({ words, alt, altDe }: { words: WordsOf; alt: string; altDe: string }) {
  return (
    <>
      <label>
        {words.alt}
        <textarea name="alt" rows={2} maxLength={250} required placeholder={words.altHint} lang="en">
          {alt}
        </textarea>
      </label>
      <label>
        {words.altDe}
        <textarea name="alt-de" rows={2} maxLength={250} lang="de">
          {altDe}
        </textarea>
      </label>
    </>
  );
}
