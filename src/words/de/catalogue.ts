/** Sätze für die Werkstatt über einen Eintrag, der sich so nicht lesen lässt. */
import type { CatalogueSentences, QuantityUnit } from '../catalogueCodes.ts';
import { formatMoney } from '../format.ts';
import { sentenceOf } from '../sentence.ts';
import { designMending, designProblems, mm, number } from './design.ts';
import { remarks } from './remarks.ts';
import { contentFile } from './contentFile.ts';
import { shopFile } from './shopFile.ts';
import { teachFile } from './teachFile.ts';

const perhaps = (near: string): string => (near === '' ? '' : `War „${near}“ gemeint? `);
const forms = { text: 'ein Text', list: 'eine Liste', fields: 'eine Gruppe eigener, eingerückter Felder' };
const wouldFit = (fitting: string): string => (fitting === '' ? '' : `„${fitting}“ würde passen. `);

const UNIT: Readonly<Record<QuantityUnit, string>> = {
  ...{ mm: 'mm', m: 'm', g: 'g', 'g/m': 'g/m', N: 'N', '%': '%' },
  ...{ min: 'min', weeks: 'Wochen', 'hours a week': 'Stunden in der Woche', months: 'Monate' },
};

export const catalogue: CatalogueSentences = {
  'folder-missing': ({ folder }) => ({
    what: `Den Ordner ${folder} gibt es nicht.`,
    fix: 'Nennen Sie den Ordner, in dem shop.yaml, components, wires, pieces und guides liegen.',
  }),
  'shop-missing': ({ file }) => ({
    what: `Dem Laden fehlt ${file}.`,
    fix: `Schreiben Sie ${file} mit Name, Währung, Zugaben und Bestellweg.`,
  }),
  ...contentFile,
  'not-fields': () => ({
    what: 'Der Eintrag hat keine Felder.',
    fix: 'Schreiben Sie ein Feld je Zeile, etwa „name: Weir Light“.',
  }),
  'missing-field': ({ field }) => ({
    what: `„${field}“ fehlt.`,
    fix: `Fügen Sie eine Zeile „${field}: …“ ein.`,
  }),
  'empty-field': ({ field }) => ({
    what: `Hinter „${field}“ steht nichts.`,
    fix: `Schreiben Sie den Wert in dieselbe Zeile oder streichen Sie „${field}“.`,
  }),
  'unknown-field': ({ field, near, known }) => ({
    what: `„${field}“ ist hier kein Feld.`,
    fix: `${perhaps(near)}Die Felder heißen: ${known}.`,
  }),
  'wrong-form': ({ field, value, wanted }) => ({
    what: `„${field}“ ist „${value}“, sollte aber ${forms[wanted]} sein.`,
    fix:
      wanted === 'list'
        ? 'Schreiben Sie jedes Stück in eine eigene Zeile mit einem Strich davor.'
        : `„${field}“ muss ${forms[wanted]} sein.`,
  }),
  'not-one-of': ({ value, options }) => ({
    what: `„${value}“ steht nicht zur Wahl.`,
    fix: `Schreiben Sie eines von: ${options}.`,
  }),
  'not-yes-or-no': ({ value }) => ({
    what: `„${value}“ ist weder ja noch nein.`,
    fix: 'Schreiben Sie yes oder no.',
  }),
  'not-whole': ({ value, least, most }) => ({
    what: `„${value}“ ist keine ganze Zahl von ${least} bis ${most}.`,
    fix: `Schreiben Sie eine ganze Zahl von ${least} bis ${most} in Ziffern.`,
  }),
  'not-a-measure': ({ value, example }) => ({
    what: `„${value}“ ist kein Maß.`,
    fix: `Schreiben Sie Zahl und Einheit, etwa „${example}“.`,
  }),
  'unit-missing': ({ value, units }) => ({
    what: `„${value}“ hat keine Einheit.`,
    fix: `Schreiben Sie die Einheit dahinter: ${units}.`,
  }),
  'unit-wrong': ({ value, unit, units }) => ({
    what: `„${value}“ hat die Einheit „${unit}“, mit der man das nicht misst.`,
    fix: `Nehmen Sie eine von: ${units}.`,
  }),
  'out-of-range': ({ value, least, most, unit }) => ({
    what: `„${value}“ liegt außerhalb des Möglichen: ${number(least)} bis ${number(most)} ${UNIT[unit]}.`,
    fix: 'Prüfen Sie Zahl und Einheit.',
  }),
  'price-without-currency': ({ value }) => ({
    what: `„${value}“ ist ein Preis ohne Währung.`,
    fix: `Schreiben Sie die Währung dazu, etwa „£${value}“ oder „${value} GBP“.`,
  }),
  'not-money': ({ value }) => ({
    what: `„${value}“ ist kein Geldbetrag.`,
    fix: 'Schreiben Sie ihn mit Punkt und nicht mehr Stellen, als die Währung hat, etwa „£48.00“ oder „48.00 GBP“.',
  }),
  'currency-unknown': ({ value, currency }) => ({
    what: `„${value}“ steht in ${currency}, einer hier unbekannten Währung.`,
    fix: 'Nehmen Sie eine von GBP, EUR, USD, CHF, SEK, NOK, DKK, PLN, CAD, AUD, NZD, JPY.',
  }),
  'currency-other': ({ value, currency }) => ({
    what: `„${value}“ steht nicht in der Währung des Ladens, ${currency}.`,
    fix: `Schreiben Sie den Betrag in ${currency} oder ändern Sie die Währung in shop.yaml.`,
  }),
  'not-a-date': ({ value }) => ({
    what: `„${value}“ ist kein Datum.`,
    fix: 'Schreiben Sie Jahr, Jahr und Monat oder den Tag: 2024, 2024-05 oder 2024-05-17.',
  }),
  ...shopFile,
  ...teachFile,
  'not-a-colour': ({ value }) => ({
    what: `„${value}“ ist keine Farbe.`,
    fix: "Schreiben Sie # und sechs Ziffern oder Buchstaben a bis f in Anführungszeichen, etwa '#4a5866'.",
  }),
  'colour-unquoted': () => ({
    what: 'Die Farbe steht nicht in Anführungszeichen, und alles nach # gilt als Bemerkung.',
    fix: "Setzen Sie sie in Anführungszeichen, etwa '#4a5866'.",
  }),
  'not-an-id': ({ value }) => ({
    what: `„${value}“ taugt nicht als Kurzname.`,
    fix: 'Nehmen Sie kleine Buchstaben a bis z, Ziffern und einzelne Bindestriche, etwa „slate-6“, höchstens 48 Zeichen.',
  }),
  'not-an-email': ({ value }) => ({
    what: `„${value}“ ist keine E-Mail-Adresse.`,
    fix: 'Schreiben Sie sie in der Form „orders@shop.example“.',
  }),
  'not-a-bead-line': ({ value }) => ({
    what: `„${value}“ sagt nicht, welches Teil und wie viele.`,
    fix: 'Schreiben Sie Anzahl und Kurznamen, etwa „2 slate-6“, oder für eines den Kurznamen allein.',
  }),
  'text-too-long': ({ length, most }) => ({
    what: `Der Text hat ${length} Zeichen; Platz ist für ${most}.`,
    fix: 'Kürzen Sie ihn.',
  }),
  'duplicate-id': ({ id, other }) => ({
    what: `„${id}“ gibt es zweimal; das andere steht in ${other}.`,
    fix: 'Geben Sie einem der beiden einen anderen Kurznamen.',
  }),
  'duplicate-name': ({ name, other }) => ({
    what: `Den Namen „${name}“ gibt es zweimal; der andere steht in ${other}.`,
    fix: 'Geben Sie einem der beiden einen anderen Namen, damit man sie unterscheiden kann.',
  }),
  'duplicate-part-number': ({ number, other }) => ({
    what: `Die Teilenummer „${number}“ gibt es zweimal; die andere steht in ${other}.`,
    fix: 'Sehen Sie auf den Tütchen nach und geben Sie jedem Teil seine eigene Nummer.',
  }),
  'size-or-both': ({ shape }) => ({
    what: `Die Maße sind unvollständig (Form: ${shape}).`,
    fix: 'Schreiben Sie „size“ allein, wenn das Teil so lang wie breit ist; sonst „along“ (Länge auf dem Draht) und „across“ (Breite) ohne „size“.',
  }),
  'sold-unclear': ({ by, from }) => ({
    what: `Wie viele in „by: ${by}“ sind, steht nicht da.`,
    fix:
      from === 'pieces'
        ? 'Schreiben Sie „pieces“ dazu: wie viele darin sind.'
        : `Schreiben Sie „pieces“ dazu oder „${from}“ mit Einheit, woraus sie berechnet werden.`,
  }),
  'measure-needed': ({ field, kind }) => ({
    what: `Ein Teil der Art ${kind} braucht „${field}“.`,
    fix: `Messen Sie nach und fügen Sie eine Zeile „${field}: … mm“ ein.`,
  }),
  'choice-needed': ({ field, kind, options }) => ({
    what: `Ein Teil der Art ${kind} braucht „${field}“.`,
    fix: `Fügen Sie eine Zeile „${field}: …“ ein, mit einem von: ${options}.`,
  }),
  'field-not-for': ({ field, kind }) => ({
    what: `„${field}“ bedeutet bei der Art ${kind} nichts.`,
    fix: 'Streichen Sie die Zeile oder prüfen Sie die Art.',
  }),
  'rounding-too-large': ({ roundingMm, mostMm }) => ({
    what: `Eine Rundung von ${mm(roundingMm)} ist mehr als das halbe Teil.`,
    fix: `Schreiben Sie höchstens ${mm(mostMm)} oder lassen Sie sie weg.`,
  }),
  'hole-too-wide': ({ holeMm, acrossMm }) => ({
    what: `Ein Loch von ${mm(holeMm)} lässt von einem ${mm(acrossMm)} breiten Teil nichts übrig.`,
    fix: 'Prüfen Sie beide Maße.',
  }),
  'sections-or-strands': () => ({
    what: 'Das Stück hat entweder keine Perlen oder „sections“ und „strands“ zugleich.',
    fix: 'Schreiben Sie „sections“ für einen Strang, „strands“ mit je eigenen „sections“ für mehrere.',
  }),
  'strands-apart': ({ leastMm, mostMm }) => ({
    what: `Die Stränge kommen auf keine gemeinsame Größe: Einer ist nie unter ${mm(leastMm)}, ein anderer nie über ${mm(mostMm)}.`,
    fix: 'Lassen Sie „fewest“ und „most“ der Stränge dieselben Größen erreichen.',
  }),
  'counts-order': ({ fewest, usual, most }) => ({
    what: `fewest ${fewest}, usual ${usual} und most ${most} steigen nicht an.`,
    fix: 'fewest darf nicht über usual liegen und usual nicht über most.',
  }),
  'focal-place': () => ({
    what: 'Ein Mittelstück steht in der Mitte: als erstes in einem gespiegelten Strang und einmal.',
    fix: 'Rücken Sie es an die Spitze, ohne usual, fewest und most, oder streichen Sie „role: focal“.',
  }),
  'lie-needed': ({ strands }) => ({
    what: `${strands} Stränge, aber nichts sagt, wie sie liegen.`,
    fix: 'Fügen Sie „lie: side-by-side“ oder „lie: nested“ ein.',
  }),
  'unknown-material': ({ material, near }) => ({
    what: `Das Material „${material}“ ist nicht bekannt.`,
    fix: `${perhaps(near)}Nehmen Sie einen Namen aus der Materialliste und „weight“ für das Gewicht.`,
  }),
  'unknown-component': ({ id, near }) => ({
    what: `Ein Teil „${id}“ gibt es hier nicht.`,
    fix: `${perhaps(near)}Tragen Sie es in eine Datei in components ein oder nehmen Sie ein vorhandenes.`,
  }),
  'unknown-wire': ({ id, near }) => ({
    what: `Einen Draht „${id}“ gibt es nicht.`,
    fix: `${perhaps(near)}Tragen Sie ihn in eine Datei in wires ein oder nehmen Sie einen vorhandenen.`,
  }),
  'end-hole-too-small': ({ component, holeMm, needMm, wire }) => ({
    what: `„${component}“ steht am Ende, wo der Draht „${wire}“ doppelt zurückläuft: Das Loch misst ${mm(holeMm)}, nötig sind ${mm(needMm)}.`,
    fix: 'Setzen Sie neben die Quetschperle Perlen mit größerem Loch, oder nehmen Sie dünneren Draht.',
  }),
  'crimp-too-loose': ({ crimp, insideMm, mostMm, wire, fitting }) => ({
    what: `Die Quetschperle „${crimp}“ misst innen ${mm(insideMm)}, zu weit für den doppelten Draht „${wire}“: höchstens ${mm(mostMm)}.`,
    fix: `${wouldFit(fitting)}Nehmen Sie eine kleinere Quetschperle oder dickeren Draht, oder erlauben Sie in shop.yaml mehr Spiel.`,
  }),
  'size-absurd': ({ mm: size, leastMm, mostMm }) => ({
    what: `Mit den üblichen Anzahlen misst das Stück ${mm(size)}; eines, das jemand tragen kann, misst ${mm(leastMm)} bis ${mm(mostMm)}.`,
    fix: 'Prüfen Sie die Anzahlen, und ob sie für eine Seite oder für das Ganze gelten.',
  }),
  design: ({ error, fitting }) => ({
    what: sentenceOf(designProblems, error),
    fix: `${wouldFit(fitting)}${designMending[error.code] ?? 'Prüfen Sie Anzahlen und Maße an dieser Stelle.'}`,
  }),
  ...remarks,
  'instead-twice': ({ id }) => ({
    what: `„${id}“ hat das Stück schon von sich aus, oder es steht hier zweimal.`,
    fix: 'Lassen Sie diese Zeile weg: Was das Stück von sich aus hat, gibt es immer.',
  }),
  'instead-of-nothing': ({ pendant }) => ({
    what: `„${pendant}“ kann nicht anstelle eines Anhängers hängen, denn das Stück hat keinen.`,
    fix: 'Geben Sie dem Stück unter pendant einen eigenen Anhänger oder lassen Sie diesen weg.',
  }),
  'instead-needs-ring': ({ clasp }) => ({
    what: `„${clasp}“ schließt in einen Ring, und weder hier noch beim Stück steht einer.`,
    fix: 'Schreiben Sie einen Ring dazu, etwa „clasp: lobster-12-brass, ring: ring-6-brass“.',
  }),
  'not-a-country': ({ value }) => ({
    what: `„${value}“ sind nicht die zwei Buchstaben eines Landes.`,
    fix: `${value.toUpperCase() === 'UK' ? 'Großbritannien und Nordirland sind GB. ' : ''}Schreiben Sie die zwei Großbuchstaben nach ISO 3166-1 wie GB, DE oder US, oder „everywhere else“ für alle, die keine andere Gruppe nennt.`,
  }),
  'post-nothing': () => ({
    what: 'Unter „post“ stehen weder Gruppen von Ländern noch ein Ort zum Abholen.',
    fix: 'Schreiben Sie „groups“ dazu mit dem, was der Versand kostet, oder „collection“ mit wo und wann; oder streichen Sie „post“, dann wird niemand gefragt.',
  }),
  'no-bands': () => ({
    what: 'Diese Gruppe von Ländern hat keine Gewichtsstufen, also kann nichts dorthin gehen.',
    fix: 'Schreiben Sie „bands“ dazu, jede Stufe mit „up-to: 250 g“ und „price: £4.20“; oder streichen Sie die Gruppe.',
  }),
  'country-twice': ({ country, group, other }) => ({
    what: `„${country}“ steht in Gruppe ${group} und schon in Gruppe ${other}.`,
    fix: 'Lassen Sie es in der Gruppe stehen, deren Preise dafür gelten.',
  }),
  'bands-overlap': ({ fromG, toG, endG }) => ({
    what: `Die Stufe von ${number(fromG)} bis ${number(toG)} g überschneidet sich mit der vor ihr, die bis ${number(endG)} g geht: Ein Paket hätte zwei Preise.`,
    fix: `Schreiben Sie die leichteste Stufe zuerst; diese geht von ${number(endG)} g an weiter, also muss „up-to“ darüber liegen, und „from“ kann wegbleiben.`,
  }),
  'bands-gap': ({ endG, fromG }) => ({
    what: `Für Pakete zwischen ${number(endG)} und ${number(fromG)} g gibt es keine Stufe: Sie hätten keinen Preis.`,
    fix: `Schreiben Sie „from: ${number(endG)} g“, oder lassen Sie „from“ weg: Eine Stufe beginnt, wo die letzte endet.`,
  }),
  'band-empty': ({ fromG, toG }) => ({
    what: `Die Stufe beginnt bei ${number(fromG)} g und endet bei ${number(toG)} g, also passt nichts hinein.`,
    fix: 'Prüfen Sie beide Gewichte, oder lassen Sie „from“ weg.',
  }),
  'band-cheaper': ({ minor, beforeMinor, currency }) => ({
    what: `Diese Stufe kostet ${formatMoney(minor, currency, 'de')}, weniger als die leichtere vor ihr mit ${formatMoney(beforeMinor, currency, 'de')}.`,
    fix: 'Prüfen Sie beide Preise; ein schwereres Paket kostet gleich viel oder mehr.',
  }),
  'bands-end': ({ piece, weightG, mostG, countries }) => ({
    what: `„${piece}“ wiegt in der größten Länge verpackt ${number(weightG)} g, aber die letzte Stufe für ${countries} endet bei ${number(mostG)} g.`,
    fix: 'Schreiben Sie eine Stufe für schwerere Pakete dazu, oder setzen Sie „up-to“ der letzten höher.',
  }),
  'picture-outside': ({ file }) => ({
    what: `Das Bild „${file}“ liegt außerhalb des Inhaltsordners.`,
    fix: 'Legen Sie es neben das Stück und schreiben Sie nur den Dateinamen.',
  }),
  'picture-missing': ({ file }) => ({
    what: `Das Bild „${file}“ ist nicht da.`,
    fix: 'Prüfen Sie den Namen samt Großbuchstaben, oder legen Sie die Datei neben das Stück.',
  }),
  'picture-format': ({ file }) => ({
    what: `„${file}“ ist kein Bild in JPEG, PNG, WebP oder AVIF.`,
    fix: 'Speichern Sie es als JPEG und nennen Sie diese Datei.',
  }),
  'picture-broken': ({ file }) => ({
    what: `Das Bild „${file}“ ist beschädigt: Sein Ende fehlt.`,
    fix: 'Kopieren Sie es noch einmal von der Kamera.',
  }),
  'picture-crop': ({ value }) => ({
    what: `„${value}“ ist kein Ausschnitt des Bildes.`,
    fix: 'Schreiben Sie vier Prozentzahlen: von links, von oben, Breite und Höhe, wie in 10% 0% 80% 100%.',
  }),
  'guide-language': ({ language, known }) => ({
    what: `Der Laden ist nicht auf „${language}“ geschrieben.`,
    fix: `Legen Sie den Ratgeber in einen Ordner mit einem dieser Namen: ${known}.`,
  }),
};
