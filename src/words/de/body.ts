/** Was die Körperzeichnung sagt. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { FigureProblem } from '#core/body/figure.ts';
import type { body as english } from '../en/body.ts';
import type { Sentences } from '../sentence.ts';
import { fromPit, pitBand } from './pit.ts';

const problems: Sentences<FigureProblem> = {
  'under-two': () =>
    'Für ein Kind unter zwei Jahren gibt es hier keine Größe: Einem so kleinen Kind gehört nichts um den Hals. Bitte bestellen Sie keines.',
  'no-child': ({ mostYears }, f) =>
    `Ab ${f.number(mostYears)} Jahren wählen Sie bitte eine erwachsene Person.`,
  'girth-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} ist kein Halsumfang: Er liegt zwischen ${f.length(leastMm)} und ${f.length(mostMm)}.`,
  'height-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} ist keine Körpergröße: Sie liegt zwischen ${f.length(leastMm)} und ${f.length(mostMm)}.`,
};

const assumptions: Readonly<Record<AssumptionCode, string>> = {
  'chest-slope': 'die Brust fällt um 20° ab (eine runde Zahl, nicht gemessen)',
  'zero-at-pit': 'ein Strang, so lang wie der Umfang des Halsansatzes, reicht gerade bis zur Halsgrube',
  'mean-neck': 'der Hals ist der durchschnittliche',
  'mean-height': 'die Körpergröße ist die durchschnittliche',
  pooled: 'Maße von Frauen und Männern zusammen',
  'adult-lines': 'die Proportionen Erwachsener, verkleinert',
};

export const body: typeof english = {
  problems,
  assumptions,
  title: 'Getragen',
  picture: (name) => `${name} am Körper`,
  whoLegend: 'Wer wird es tragen?',
  who: { unstated: 'Keine Angabe', female: 'Eine Frau', male: 'Ein Mann', child: 'Ein Kind' },
  neck: 'Halsumfang',
  height: 'Körpergröße',
  age: 'Alter in Jahren',
  optional: 'Wenn Sie es wissen',
  ageWrong: 'Schreiben Sie das Alter in Jahren, zum Beispiel 8.',
  landmarks: { pit: 'Halsgrube', bust: 'Brust, irgendwo hier', navel: 'Nabel' },
  handle: 'Tiefster Punkt: ziehen oder die Pfeiltasten benutzen',
  handleFixed: 'Tiefster Punkt',
  hint: 'Ziehen Sie den tiefsten Punkt oder tippen Sie auf die Stelle, wo er hängen soll: Die Länge folgt, soweit die Perlen es zulassen.',
  hangs: (f, dropMm, leastMm, mostMm) =>
    `Hängt ungefähr ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  pendantHangs: (f, dropMm, leastMm, mostMm) =>
    `Die Mitte des Anhängers hängt ungefähr ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  handleText: (f, lengthMm, dropMm) => `${f.length(lengthMm)} lang, ${fromPit(f, dropMm)}`,
  tooShort: (f, neckBaseMm) =>
    `Zu kurz, um sich an diesem Halsansatz zu schließen, der ungefähr ${f.length(neckBaseMm)} Umfang hat.`,
  onNeck: (f, neckMm) =>
    `Gezeigt an einem Hals von ${f.length(neckMm)} Umfang, um den dieses Stück bequem liegt.`,
  unreachable: 'So weit reicht dieses Stück nicht.',
  names: {
    collar: 'Collier',
    choker: 'Choker',
    princess: 'Prinzesslänge',
    matinee: 'Matineelänge',
    opera: 'Opernlänge',
    rope: 'Sautoir',
  },
  compare: 'Diese Länge zum Vergleich behalten',
  compared: 'Verglichene Längen',
  take: 'Zurück',
  forgetShort: 'Vergessen',
  forget: (length) => `${length} vergessen`,
  takeLength: (length) => `Zurück zu ${length}`,
  estimate:
    'Eine Schätzung für einen typischen Körper mit diesem Hals. Körper sind verschieden: Hängen Sie eine Schnur dorthin, wo es liegen soll, messen Sie die Schnur und bestellen Sie nach fertiger Länge.',
  restsOn: (f, reasons) => `Vorausgesetzt ist: ${f.list(reasons)}.`,
  surveys:
    'Körpermaße: ANSUR II, 2012 (erwachsene Soldatinnen und Soldaten); Snyder und andere, 1977 (Kinder). Unter allen Menschen ist die Streuung größer.',
  childTitle: 'Bevor Sie für ein Kind bestellen',
  childCautions: [
    'Ein Strang um den Hals kann hängen bleiben und strangulieren. Nicht beim Schlafen, Spielen oder Klettern, und nie ohne eine erwachsene Person.',
    'Perlen und Verschlussteile sind Kleinteile, die verschluckt oder eingeatmet werden können. Nicht für Kinder unter drei Jahren und für kein Kind, das noch Dinge in den Mund nimmt.',
    'Ein Strang auf ummanteltem Stahldraht reißt nicht, wenn er hängen bleibt.',
    'Die Vorschriften für Kinderschmuck sind von Ort zu Ort verschieden: Prüfen Sie, was bei Ihnen gilt, und fragen Sie im Zweifel, wer für die Gesundheit des Kindes sorgt.',
  ],
};
