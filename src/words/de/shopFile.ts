/** Sätze über das, was nur die Datei des Ladens sagt: Adressen von Diensten, Steuer, Rechnungsnummern. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const shopFile: Pick<
  CatalogueSentences,
  'not-https' | 'place-missing' | 'not-a-tax' | 'not-a-prefix'
> = {
  'not-https': ({ value }) => ({
    what: `„${value}“ ist keine https-Adresse.`,
    fix: 'Schreiben Sie die ganze Adresse, wie der Dienst sie nennt; sie beginnt mit https://.',
  }),
  'place-missing': ({ value, place }) => ({
    what: `In „${value}“ fehlt ${place}.`,
    fix: `Schreiben Sie ${place} dorthin, wo in der Adresse die Nummer steht.`,
  }),
  'not-a-tax': ({ value }) => ({
    what: `„${value}“ sagt nichts über die Steuer.`,
    fix: 'Schreiben Sie „not registered“ (nicht steuerpflichtig) oder den Satz, der in Ihren Preisen steckt, etwa 19 %.',
  }),
  'not-a-prefix': ({ value }) => ({
    what: `Mit „${value}“ kann keine Rechnungsnummer beginnen.`,
    fix: 'Schreiben Sie Buchstaben, Ziffern, Punkte und Bindestriche, {year} für das Jahr, am Ende keine Ziffer: {year}- oder NB-{year}-.',
  }),
};
