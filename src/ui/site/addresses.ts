/** Addresses of the public pages. English stands at the root, other languages under their code. */
import { underBase } from './base.ts';
import { LANGS, type Lang } from '#words/lang.ts';

/** Language a page is in when its address names none. */
export const FIRST_LANG: Lang = 'en';

/** Path of a page: `address('de', 'pieces', 'oxbow')` is `/de/pieces/oxbow/`, with the folder before it in which
 * the shop stands. Empty parts are left out. */
export function address(lang: Lang, ...parts: readonly (string | number)[]): string {
  const prefix = lang === FIRST_LANG ? [] : [lang];
  const path = [...prefix, ...parts.map(String).filter((part) => part !== '')].map(encodeURIComponent);
  return underBase(path.length === 0 ? '/' : `/${path.join('/')}/`);
}

/** The same page in another language, from the parts that name it in any. */
export function otherLangs(lang: Lang): Lang[] {
  return LANGS.filter((other) => other !== lang);
}

/** The `[...lang]` part of a route. */
export function langParam(lang: Lang): string | undefined {
  return lang === FIRST_LANG ? undefined : lang;
}

/** Every language's route with the same further parameters and properties: one path each. */
export function inEachLang<Props extends object>(
  make: (
    lang: Lang,
  ) => readonly { readonly params: Record<string, string | undefined>; readonly props: Props }[],
): { params: Record<string, string | undefined>; props: Props & { lang: Lang } }[] {
  return LANGS.flatMap((lang) =>
    make(lang).map(({ params, props }) => ({
      params: { lang: langParam(lang), ...params },
      props: { ...props, lang },
    })),
  );
}
