/** Sätze über ihre eigenen Worte einer Anleitung. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const teachFile: Pick<CatalogueSentences, 'teach-place-missing' | 'teach-place-unknown'> = {
  'teach-place-missing': ({ place }) => ({
    what: `In Ihren Worten für diesen Schritt fehlt {${place}}, und niemand könnte ihn tun.`,
    fix: `Schreiben Sie {${place}}, wo der Laden einsetzt, was jede Größe verlangt; oder lassen Sie den Schritt weg, dann wird er wie üblich erklärt.`,
  }),
  'teach-place-unknown': ({ place, known }) => ({
    what: `{${place}} gibt es in diesem Schritt nicht.`,
    fix:
      known === ''
        ? 'Schreiben Sie es aus; an diesem Schritt hängt nichts von der Größe ab.'
        : `Es gibt ${known}.`,
  }),
};
