/** That her files can't be read as they stand, and what to mend in them. */
import type { Problem } from '#catalogue/read/problem.ts';
import type { Lang } from '#words/lang.ts';
import { contentFormWords } from '#words/words.ts';
import { ProblemList } from '../ProblemList.tsx';

type Props = { readonly problems: readonly Problem[]; readonly lang: Lang };

export function Unreadable({ problems, lang }: Props) {
  const { filesUnreadable } = contentFormWords(lang);
  return (
    <div class="warning">
      <p>{filesUnreadable}</p>
      <ProblemList problems={problems} lang={lang} />
    </div>
  );
}
