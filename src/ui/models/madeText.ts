/** When a piece was first made, as exactly as it is known: "2024", "May 2024", "17 May 2024". */
import { locale, type Lang } from '#words/lang.ts';

export function madeText(made: string, lang: Lang): string {
  const [, month, day] = made.split('-');
  const format = new Intl.DateTimeFormat(locale(lang), {
    timeZone: 'UTC',
    year: 'numeric',
    ...(month !== undefined && { month: 'long' }),
    ...(day !== undefined && { day: 'numeric' }),
  });
  return format.format(new Date(made));
}
