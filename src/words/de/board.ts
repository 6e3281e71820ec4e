/** Das Perlenbrett, wie die Schmuckmacherin es liest. */
import type { Measure } from '#core/design/choice.ts';
import type { board as boardEn } from '../en/board.ts';
import type { Format } from '../format.ts';

const beads = (count: number, f: Format): string => `${f.number(count)} ${count === 1 ? 'Perle' : 'Perlen'}`;

const measured: Readonly<Record<Measure['of'], string>> = {
  wrist: 'Handgelenke bei bequemem Sitz',
  ankle: 'Knöchel bei bequemem Sitz',
  neck: 'Hälse bei bequemem Sitz',
  length: 'Fertige Längen',
};

export const board: typeof boardEn = {
  title: (name) => `${name} auf dem Brett`,
  noScript: 'Das Brett braucht JavaScript. Ohne es wird ein Stück in seiner Datei geschrieben.',
  picture: 'Das Stück auf dem Perlenbrett',
  emptyBoard:
    'Noch liegt nichts hier. Nehmen Sie eine Perle aus Ihren Fächern: Sie kommt in die Mitte, und von dort geht es nach außen.',
  zero: 'die Mitte',
  named: { run: 'Reihe', middle: 'Mitte', pattern: 'Muster', filler: 'Am Verschluss' },
  undo: 'Zurück',
  redo: 'Noch einmal',
  undone: 'Zurückgenommen.',
  redone: 'Noch einmal getan.',
  beads,

  trays: {
    heading: 'Ihre Fächer',
    search: 'Perle finden',
    hint: 'Schreiben Sie, wie viele und was, etwa „5 Schiefer“, und drücken Sie die Eingabetaste; mit Umschalt kommt sie in die Mitte, mit Alt steht sie stattdessen.',
    found: (count) => `${count} gefunden`,
    none: 'Nichts in Ihren Fächern heißt so.',
    more: (count) => `${count} weitere: Ein Wort aus dem Namen findet sie.`,
    left: (count, f) => (count < 0 ? `${f.number(-count)} zu wenig` : `${f.number(count)} übrig`),
    tray: (tray) => `Fach ${tray}`,
    where: 'Eine Perle kommt',
    modes: { after: 'daneben', middle: 'in die Mitte', instead: 'stattdessen' },
    modeHints: {
      after: 'neben das, was in der Hand ist, von der Mitte weg',
      middle: 'genau in die Mitte, einmal',
      instead: 'an die Stelle dessen, was in der Hand ist',
    },
    put: (what, side) => `${what} ${side}.`,
    sides: { after: 'gelegt', middle: 'in die Mitte gelegt', instead: 'stattdessen genommen' },
  },

  runs: {
    heading: 'Was daliegt, von der Mitte nach außen',
    headingOneRun: 'Was daliegt, vom Verschluss zum Ring',
    label: (strand) => `Perlen von Strang ${strand}`,
    help: 'Pfeiltasten wählen, mit Umschalt markieren sie weiter. Eine Zahl und die Eingabetaste: so viele. Eingabetaste allein: zu den Fächern, Esc zurück hierher. Entf: weg. Alt mit Pfeil: verschieben. R: das wiederholt sich, nach einer Zahl so oft. M: in die Mitte. A: der ganze Abschnitt. Strg+Z: zurück.',
    keys: 'Tasten',
    times: (usual, fewest, most) =>
      fewest === most ? (usual === 1 ? '' : `${usual} ×`) : `${usual} × (${fewest} bis ${most})`,
    run: (count, name) => (count === 1 ? name : `${count} × ${name}`),
    typed: (figures) => `${figures}: Eingabetaste für so viele`,
    focal: 'in der Mitte',
    filler: 'am Verschluss',
  },

  hand: {
    heading: 'In der Hand',
    nothing: 'Nichts ist in der Hand. Tippen Sie auf eine Perle auf dem Brett oder in der Liste.',
    count: 'Wie viele',
    fewer: 'Eine weniger',
    more: 'Eine mehr',
    remove: 'Wegnehmen',
    inwards: 'Nach innen',
    outwards: 'Nach außen',
    repeats: 'Das wiederholt sich',
    loose: 'Wiederholt sich nicht mehr',
    middle: 'Zur Mitte machen',
    removed: 'Weggenommen.',
    moved: 'Verschoben.',
    counted: (count) => `Jetzt ${count}.`,
    repeated: 'Als Wiederholung markiert.',
  },

  section: {
    heading: (name) => `Abschnitt „${name}“`,
    name: 'Sein Name',
    role: 'Er ist',
    roles: {
      focal: 'die Mitte, die einmal steht',
      body: 'Teil des Strangs',
      filler: 'Füllung am Verschluss',
    },
    usual: 'Mal, auf jeder Seite',
    usualOneRun: 'Mal, im Ganzen',
    fewest: 'mindestens',
    most: 'höchstens',
    range: 'Für andere Größen',
    whole: 'Ganz markieren',
  },

  strands: {
    heading: 'Stränge',
    one: (strand) => `Rinne ${strand}`,
    choose: 'Strang in Arbeit',
    mirrored: 'Die andere Seite ist sein Spiegel',
    add: 'Noch ein Strang wie dieser',
    remove: 'Diesen Strang wegnehmen',
    lie: 'Sie liegen',
    lies: { 'side-by-side': 'nebeneinander', nested: 'untereinander' },
    gap: 'Abstand dazwischen, mm',
  },

  closing: {
    heading: 'Draht und Verschluss',
    wire: 'Draht',
    clasp: 'Verschluss',
    ring: 'Ring am anderen Ende',
    crimp: 'Quetschröhrchen',
    cover: 'Quetschhülle',
    guard: 'Drahtschutz',
    loop: 'Drahtschlaufe, mm',
    extender: 'Kette zum Verlängern, mm',
    link: 'Innenlänge eines Glieds, mm',
    none: 'keiner',
    choose: 'wählen …',
    pendant: 'Anhänger',
    ringsOn: 'Seine Ringe, vom Draht abwärts',
    addRing: 'Noch ein Ring',
    removeRing: 'Letzten Ring abnehmen',
    kind: 'Es ist',
    kinds: {
      necklace: 'eine Kette',
      bracelet: 'ein Armband',
      anklet: 'ein Fußkettchen',
      collar: 'ein Halsreif',
    },
    oneSided: 'Es hat eine schönere Seite',
    upright: 'Diese Seite hat oben und unten',
  },

  figures: {
    heading: 'Wie es daliegt',
    length: 'Fertige Länge',
    girth: 'Innen herum',
    mass: 'Gewicht',
    beads: 'Perlen',
    minutes: 'Arbeit',
    minutesValue: (minutes, f) => `${f.number(minutes)} min`,
    materials: 'Material',
    rule: 'Preis nach Ihrer Regel',
    listed: 'Ihr Preis',
    cut: 'Draht abschneiden',
    slack: 'Spiel lassen',
    strength: 'Draht hält',
    strengthValue: (factor, f) =>
      factor > 100 ? 'weit mehr, als er muss' : `das ${f.number(factor, 1)}-Fache des Zugs`,
    notYet: 'Die Zahlen kommen, wenn es sich auffädeln lässt.',
  },

  findings: {
    heading: 'Anzusehen',
    some: (count) => `${count} anzusehen`,
    fine: 'Nichts zu richten.',
    stops: 'So lässt es sich nicht auffädeln',
    show: 'Zeigen',
    empty: 'Der Strang ist leer.',
    emptyParts: 'Wählen Sie einen Verschluss und ein Quetschröhrchen.',
    tail: (component, holeMm, needMm, f) =>
      `Der doppelte Draht kommt am Ende nicht durch ${component} zurück: Das Loch hat ${f.number(holeMm, 2)} mm, er braucht ${f.number(needMm, 2)} mm. Legen Sie eine Perle mit größerem Loch an den Verschluss, oder nehmen Sie dünneren Draht.`,
    stock: (component, have, need, f) =>
      `${component}: Es braucht ${f.number(need)}, Sie haben ${f.number(have)}.`,
    price: (rule) => `Ihr Preis liegt unter Ihrer Regel, die auf ${rule} kommt.`,
    weak: 'Der Draht ist für dieses Gewicht zu schwach, wenn es noch hängen bleibt. Nehmen Sie einen stärkeren.',
    place: { closing: 'Verschluss', wire: 'Draht', pendant: 'Anhänger', piece: 'Das Stück' },
  },

  sizes: {
    heading: 'Größen, in denen es geht',
    thinking: 'Die Größen werden gerechnet …',
    none: 'Sie kommen, wenn es sich auffädeln lässt.',
    of: measured,
    interval: (from, to) => (from === to ? from : `${from} bis ${to}`),
    missed: (sizes) => `Oft gefragt und nicht zu haben: ${sizes}.`,
    nothingMissed: 'Jede oft gefragte Größe dazwischen ist zu haben.',
    only: 'Noch darf sich kein Abschnitt ändern. Lassen Sie einen von weniger bis mehr gehen, dann gibt es eine Spanne.',
    for: (sizes) => `Für ${sizes}:`,
    do: 'Das tun',
    remedy: (remedy, name, f) => {
      switch (remedy.code) {
        case 'widen-section':
          return `lassen Sie „${name}“ um ${f.number(Math.abs(remedy.repeats))} weiter ${remedy.repeats > 0 ? 'hinauf' : 'hinunter'} gehen`;
        case 'add-filler':
          return `legen Sie keine bis ${f.number(remedy.count)} ${name} an den Verschluss`;
        case 'new-filler':
          return `eine Perle von ${f.number(remedy.alongMm, 1)} mm Länge am Verschluss, keine bis ${f.number(remedy.count)} davon, würde genügen`;
        case 'chain':
          return `verlängern Sie es mit einer Kette von ${f.number(remedy.mm)} mm`;
      }
    },
    noRemedy: 'keine kleine Änderung gefunden',
  },

  save: {
    save: 'Speichern',
    preview: 'Vorschau',
    saving: 'Wird gespeichert …',
    saved: 'Gespeichert',
    unsaved: 'Noch nicht gespeichert; auf diesem Gerät bewahrt',
    failed:
      'Es ließ sich nicht speichern: Die Werkbank antwortet nicht. Was auf dem Brett liegt, ist auf diesem Gerät bewahrt; versuchen Sie es noch einmal.',
    problems: 'Nicht gespeichert, und zwar deshalb:',
    problem: (what, fix) => `${what} ${fix}`,
    notWritable: 'Es ist nicht gespeichert.',
    conflict:
      'Die Datei wurde anderswo geändert, seit Sie sie geöffnet haben. Nichts ist verloren: Hier sind beide.',
    theirs: 'Wie die Datei jetzt ist',
    mine: 'Wie es auf Ihrem Brett liegt',
    keepMine: 'Das vom Brett hineinspeichern',
    takeTheirs: 'Die Datei öffnen, wie sie jetzt ist',
    gone: 'Die Datei ist nicht mehr da.',
    aside: 'Auf diesem Gerät liegt Arbeit an einem älteren Stand dieser Datei.',
    takeAside: 'Damit weitermachen',
    dropAside: 'Wegwerfen',
  },

  about: {
    heading: 'Bevor es zum ersten Mal gespeichert wird',
    name: 'Wie heißt es?',
    price: 'Preis',
    priceHint: (rule) => `Nach Ihrer Regel kommt es auf ${rule}.`,
    summary: 'Eine Zeile dazu, für die Liste',
    story: 'Seine Geschichte',
    storyHint: 'Lassen Sie sie leer und schreiben Sie sie später; die Zeile darüber steht solange da.',
    missing: 'Geben Sie ihm einen Namen und eine Zeile, dann lässt es sich speichern.',
  },

  swap: {
    heading: 'Andere Perle, anderen Draht oder Verschluss überall probieren',
    what: 'Statt',
    by: 'nehmen',
    asIs: 'Wie es liegt',
    swapped: 'Geändert',
    take: 'Die Änderung nehmen',
    same: 'Wählen Sie zwei verschiedene.',
    wire: 'der Draht',
    metal: 'alles aus',
    checks: 'Zu richten',
    none: 'nichts',
  },

  found: {
    heading: 'Von einem fertigen Stück',
    hint: 'Legen Sie jeden Abschnitt aufs Brett, etwa so oft, wie Sie ihn sehen, und messen Sie das fertige Stück: Heraus kommen die wahrscheinlichsten Anzahlen.',
    measure: 'Gemessen',
    of: { length: 'Länge, gerade gelegt', girth: 'Innen herum' },
    find: 'Anzahlen finden',
    unread: 'Schreiben Sie eine Länge, etwa „45,2 cm“ oder „17 3/4 in“.',
    off: (mm) => `${mm} daneben`,
    share: (percent) => `zu ${percent} wahrscheinlich`,
    take: 'So hinlegen',
    none: 'Keine Anzahlen kommen dem nahe.',
  },

  kindNames: {
    bead: 'Perle',
    spacer: 'Zwischenteil',
    cap: 'Perlkappe',
    crimp: 'Quetschröhrchen',
    cover: 'Quetschhülle',
    ring: 'Ring',
    clasp: 'Verschluss',
    pendant: 'Anhänger',
  },
};
