/** Guides by their short names, each language beside the other. */
import { underBase } from '#ui/site/base.ts';
import type { Guide } from '#catalogue/model/catalogue.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import type { ContentFormWords } from '#words/words.ts';

type Props = { readonly guides: readonly Guide[]; readonly words: ContentFormWords };

export function GuideListView({ guides, words }: Props) {
  const ids = [...new Set(guides.map(({ id }) => id))];
  const { languages, add, missing } = words.guides;
  return (
    <>
      <ul class="parts">
        {ids.map((id) => (
          <li>
            <span>
              {LANGS.map((lang) => {
                const guide = guides.find((one) => one.id === id && one.lang === lang);
                return guide === undefined ? (
                  <Missing id={id} lang={lang} text={missing(languages[lang])} />
                ) : (
                  <a class="guide" href={underBase(`/bench/guides/${lang}/${id}/`)} lang={lang}>
                    {guide.title}
                  </a>
                );
              })}
            </span>
          </li>
        ))}
      </ul>
      <p class="row">
        {LANGS.map((lang) => (
          <a class="button" href={underBase(`/bench/guides/${lang}/new/`)}>
            {add(languages[lang])}
          </a>
        ))}
      </p>
    </>
  );
}

function Missing({ id, lang, text }: { readonly id: string; readonly lang: Lang; readonly text: string }) {
  return (
    <a class="guide quiet" href={underBase(`/bench/guides/${lang}/new/?id=${id}`)}>
      {text}
    </a>
  );
}
