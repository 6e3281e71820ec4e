/** Sätze über das, was nur die Datei des Ladens sagt: Adressen von Diensten, Steuer, Rechnungsnummern. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const shopFile: Pick<
  CatalogueSentences,
  | 'not-https'
  | 'not-a-shop-address'
  | 'place-missing'
  | 'not-a-tax'
  | 'not-a-prefix'
  | 'money-marks'
  | 'sits-order'
  | 'ending-beyond-step'
> = {
  'not-https': ({ value }) => ({
    what: `„${value}“ ist keine https-Adresse.`,
    fix: 'Schreiben Sie die ganze Adresse, wie Ihr Browser oder der Dienst sie zeigt; sie beginnt mit https://.',
  }),
  'not-a-shop-address': ({ value }) => ({
    what: `Unter „${value}“ kann der Laden nicht stehen.`,
    fix: 'Schreiben Sie https://, den Namen der Website und, wenn es einen gibt, den Ordner, in einfachen Buchstaben, Ziffern und Bindestrichen: https://ninepin.example/ oder https://ninepin.example/shop/.',
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
  'money-marks': ({ value, meant }) => ({
    what: `„${value}“ hat Zeichen zwischen den Tausendern oder ein Komma statt eines Punktes.`,
    fix: `Schreiben Sie „${meant}“.`,
  }),
  'sits-order': ({ sit, before }) => ({
    what: `„${sit}“ gibt weniger zu als „${before}“.`,
    fix: 'Eng gibt am wenigsten zu, locker am meisten; prüfen Sie die Zahlen und ihre Einheiten.',
  }),
  'ending-beyond-step': ({ ending, step }) => ({
    what: `Preise können nicht auf ${ending} enden, wenn sie um ${step} steigen.`,
    fix: 'Schreiben Sie weniger als „round-up-to“: £0.95 bei Stufen von £1.00, £4.00 bei Stufen von £5.00.',
  }),
};
