/** Was die Macherin liest, wenn ihre Änderungen in den Laden sollen. */
import type { publish as english } from '../en/publish.ts';

const stuecke = (count: number): string => (count === 1 ? '1 Stück' : `${count} Stücken`);

export const publish: typeof english = {
  title: 'Veröffentlichen',
  waiting: 'Was Sie geändert haben, ist noch nicht im Laden.',
  lead: 'Was Sie an der Werkbank ändern, sehen nur Sie, bis Sie es veröffentlichen. Dann ändert sich der ganze Laden auf einmal, und er bleibt dabei offen.',
  since: (when) => `Der Laden steht so, wie Sie ihn am ${when} veröffentlicht haben.`,
  nothing: 'Seitdem hat sich nichts geändert.',
  will: 'Was sich ändern wird',
  kinds: { pieces: 'Stücke', components: 'Perlen und Zubehör', wires: 'Drähte', guides: 'Ratgeber' },
  shop: 'Die Regeln des Ladens: Preise der Arbeit, Versand, Adressen oder was sonst in seiner Datei steht',
  how: { new: 'neu', changed: 'geändert', gone: 'weg' },
  stock: 'Was da ist',
  stockLead: 'Diese Zahlen werden in ihre Dateien geschrieben, und der Laden rechnet mit ihnen:',
  button: 'Jetzt veröffentlichen',
  again: 'Trotzdem veröffentlichen',
  running: 'Es wird veröffentlicht',
  steps: {
    reading: 'Lese, was Sie geschrieben haben …',
    program:
      'Der ganze Laden wird neu gebaut, weil sich das Programm geändert hat. Das dauert etwa eine Minute …',
    pages: 'Die Seiten werden gemacht …',
    search: 'Die Suche wird gemacht …',
    putting: 'Alles kommt an seinen Platz …',
  },
  progress: (done, of) => `${done} von ${stuecke(of)}`,
  stay: 'Sie können diese Seite schließen; es geht von selbst weiter.',
  made: (when, seconds) => `Veröffentlicht am ${when}, in ${seconds} s. Alle sehen es jetzt.`,
  same: (when) => `Es hatte sich nichts geändert, also wurde nichts veröffentlicht (${when}).`,
  takenBack: (when) =>
    `Zurückgenommen (${when}). Ihre Änderungen stehen noch hier; der Laden zeigt, was vorher da war.`,
  failed: (when) => `Es konnte nicht veröffentlicht werden (${when}). Der Laden bleibt, wie er war.`,
  stopped: 'Es wurde unterbrochen, bevor es fertig war. Veröffentlichen Sie noch einmal.',
  mend: 'Erst zu richten',
  mendLead: 'Der Laden bleibt, wie er ist, bis das gerichtet ist:',
  said: 'Was das Programm dazu sagte',
  back: 'Zurücknehmen',
  backLead: (when) =>
    `Der Laden von davor, veröffentlicht am ${when}, kann sofort wieder gezeigt werden. Was Sie geschrieben haben, bleibt geschrieben.`,
  backButton: 'Den Laden von davor zeigen',
  backSure: 'Das zuletzt Veröffentlichte zurücknehmen',
};
