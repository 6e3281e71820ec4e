/** Ein Stück als Anleitung: die Schritte für jemanden, der zum ersten Mal auffädelt, Werkzeug, Mengen, Warnungen. */
import type { Step, StepCode } from '#core/instructions/step.ts';
import type { PhaseName } from '#core/instructions/phase.ts';
import type { Tool } from '#core/instructions/tools.ts';
import type { NameOf } from '../en/steps.ts';
import type { teaching as english } from '../en/teaching.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import { teachSentence, type TeachPhrases } from '../teachStep.ts';
import { round, SEEN_MM } from './steps.ts';

const SIDE = { left: 'links', right: 'rechts' };

const NOTHING = (): TeachPhrases => ({});

const phrases: Sentences<Step, [f: Format, name: NameOf], TeachPhrases> = {
  'wear-eye-protection': NOTHING,
  'try-clasp': ({ args: { clasp, inHalves } }, _, name) => ({
    clasp: name(clasp),
    halves: inHalves ? 'Dann trennen Sie ihn: Je eine Hälfte kommt an ein Ende.' : '',
  }),
  'join-chain': ({ args }, f, name) => ({
    length: `${args.links === null ? '' : `${f.number(args.links)} Glieder, `}${f.ruler(args.chainMm)}`,
    held: round(args, name),
  }),
  'join-ring': ({ args: { ring, above, below } }, f, name) => ({
    ring: name(ring),
    things: f.list([below, above].filter((id) => id !== null).map(name)),
  }),
  'check-facing': ({ args: { pendant, addRings } }, _, name) => ({
    facing:
      addRings === 0
        ? `${name(pendant)} zeigt nach vorn`
        : `${name(pendant)} dreht sich zur Seite, und ein Ring mehr lässt die Vorderseite nach vorn zeigen`,
  }),
  'lay-out': ({ args: { claspSide } }) => ({
    side: claspSide === null ? '' : `, den Verschluss ${SIDE[claspSide]}`,
  }),
  'cut-wire': ({ args: { wire, lengthMm } }, f, name) => ({
    length: f.ruler(lengthMm, 'up'),
    wire: name(wire),
  }),
  'thread-end': ({ args: { crimp, guard, way, ...args } }, f, name) => {
    const held = round(args, name);
    const eye = way === null ? '' : `, Öse ${f.number(way)}`;
    const things = [name(crimp), guard === null ? '' : name(guard), held === '' ? '' : `${held}${eye}`];
    return { things: things.filter((one) => one !== '').join(', dann ') };
  },
  'lead-back': ({ args: { loopMm, beads, outMm, ...args } }, f, name) => {
    const held = round(args, name);
    const back = beads === 1 ? 'die letzte Perle' : `die letzten ${f.number(beads)} Perlen`;
    return {
      through: beads === 0 ? 'die Quetschperle' : `die Quetschperle und ${back}`,
      loop: `${f.ruler(loopMm)} ${held === '' ? 'für den Verschluss' : `(${held})`}`,
      out: outMm === null ? '' : `, bis ${f.ruler(outMm)} herausstehen`,
    };
  },
  'check-loop': ({ args }, _, name) => {
    const held = round(args, name);
    return { free: held === '' ? '' : `; frei beweglich ist: ${held}` };
  },
  crimp: NOTHING,
  'close-cover': ({ args: { cover } }, _, name) => ({ cover: name(cover) }),
  'cut-tail': ({ args: { bead } }, f) => ({
    where:
      bead === null
        ? 'an der Quetschperle, denn keine Perle hier nimmt es auf,'
        : `dort, wo es Perle ${f.number(bead)} verlässt,`,
  }),
  'string-beads': ({ args: { first, last, overTail } }, f) => ({
    beads: first === last ? `Perle ${f.number(first)}` : `Perle ${f.number(first)} bis ${f.number(last)}`,
    over: overTail ? 'über Draht und Drahtende zusammen, jede dicht an die vorige' : '',
  }),
  'hang-pendant': ({ args: { pendant, rings } }, _, name) => ({
    pendant: name(pendant),
    by: rings === 0 ? 'seine eigene Öse' : rings === 1 ? 'seinen Ring' : 'seinen obersten Ring',
  }),
  'draw-up': ({ args: { slackMm, roomMm } }, f) => ({
    slack:
      slackMm < SEEN_MM
        ? 'Lassen Sie kein Spiel, das man sieht'
        : `Lassen Sie ${f.ruler(slackMm)} Draht an der letzten Perle bloß`,
    room:
      roomMm === 0
        ? ''
        : 'Die offene Hülle, über die Quetschperle gehalten, soll gerade die letzte Perle berühren.',
  }),
  measure: ({ args: { lengthMm, chained } }, f) => ({
    length: f.ruler(lengthMm),
    chain: chained ? ', das Kettchen nicht mitgezählt' : '',
  }),
  'check-pattern': ({ args: { count } }, f) => ({ count: f.number(count) }),
  'check-closed': ({ args: { lengthMm, chainMm, chainUsedMm, links, link } }, f) => {
    if (chainMm === 0) return { closed: f.ruler(lengthMm) };
    const used =
      chainUsedMm === 0
        ? ', wie es diese Größe will'
        : link !== null
          ? `; in seinem ${link}. Glied, wie es diese Größe will: ${f.ruler(lengthMm + chainUsedMm)}`
          : `; ${f.ruler(chainUsedMm)} weiter am Kettchen, wie es diese Größe will: ${f.ruler(lengthMm + chainUsedMm)}`;
    const last = links === null ? 'am letzten Glied' : `im letzten Glied, dem ${links}.`;
    return {
      closed: `${f.ruler(lengthMm)} vor dem Kettchen${used}; ${last}: ${f.ruler(lengthMm + chainMm)}`,
    };
  },
};

const usual: Sentences<Step, []> = {
  'wear-eye-protection': () =>
    'Setzen Sie eine Schutzbrille auf, bevor Sie zum Seitenschneider greifen, und lassen Sie sie auf: Abgeschnittene Drahtenden fliegen. Wer zusieht, braucht auch eine.',
  'try-clasp': () =>
    'Öffnen und schließen Sie den {clasp} ein paarmal. Geht er schwer, nehmen Sie jetzt einen anderen; später lässt er sich nicht mehr tauschen. {halves}',
  'join-chain': () =>
    'Nehmen Sie {length} Kettchen. Fassen Sie das Glied an einem Ende mit zwei Zangen und drehen Sie es nach vorn und hinten auf, nie auseinander; hängen Sie es ein und drehen Sie es zu: {held}.',
  'join-ring': ({ args: { joint } }) =>
    joint === 'open'
      ? '{ring}: Fassen Sie ihn mit zwei Zangen und drehen Sie ihn nach vorn und hinten auf, nie auseinander, sonst wird er nicht wieder rund. Hängen Sie ein: {things}. Drehen Sie ihn zu, bis die Enden aneinanderliegen.'
      : '{ring}: Heben Sie ein Ende mit der Spaltringzange an und drehen Sie ein, bis beide Windungen halten: {things}.',
  'check-facing': () => 'Halten Sie es hoch, wie es hängen wird, und sehen Sie hin: {facing}.',
  'lay-out': () =>
    'Legen Sie alle Perlen auf dem Brett aus wie im Bild, von null nach beiden Seiten{side}. Treten Sie einen Schritt zurück: Jetzt lässt sich noch alles ändern.',
  'cut-wire': () =>
    'Schneiden Sie {length} Draht ab ({wire}). Halten Sie beide Seiten des Schnitts fest, damit kein Ende fliegt.',
  'thread-end': () => 'Fädeln Sie in dieser Folge auf: {things}.',
  'lead-back': () =>
    'Führen Sie den Draht zurück durch {through}{out}. Die Schlaufe soll so groß werden: {loop}; lassen Sie sie erst ein wenig größer, denn das Quetschen zieht sie zu.',
  'check-loop': () =>
    'Sehen Sie in die Quetschperle: Beide Drähte liegen nebeneinander und kreuzen sich nicht{free}. Sonst ziehen Sie sie wieder auf und beginnen dieses Ende neu.',
  crimp: () =>
    'Drücken Sie die Quetschperle zweimal: erst in der Mulde der Zange, die einen Zahn hat, so dass jeder Draht in seiner eigenen Rinne liegt; dann, eine Vierteldrehung weiter, in der runden Mulde, so dass sie sich zusammenlegt. Nicht öfter, sonst reißt sie. Prüfen Sie mit einem Zug am Draht.',
  'close-cover': () =>
    'Setzen Sie die {cover} über die Quetschperle, ist sie eng, erst ein wenig geöffnet, und drücken Sie sie mit leichter Hand rund, die Naht nach hinten.',
  'cut-tail': () =>
    'Schneiden Sie das Drahtende, vom Gesicht weg, bündig ab, {where} ohne den Draht zu berühren, der weiterläuft. Schieben Sie den Stumpf hinein: Ein Schnittende kratzt.',
  'string-beads': () => 'Fädeln Sie auf: {beads} {over}.',
  'hang-pendant': () => 'Hier hängt der {pendant}: Fädeln Sie {by} auf, dann geht es mit den Perlen weiter.',
  'draw-up': () =>
    'Ziehen Sie den Draht an. {slack}. Biegen Sie den Strang zum Ring; keine Perle darf abstehen, nichts darf spannen. {room}',
  measure: () =>
    'Legen Sie es gerade und messen Sie alles, von wo das eine Ende trägt bis wo das andere trägt{chain}: {length}. Stimmt es nicht, zählen Sie nach, bevor Sie quetschen.',
  'check-pattern': () =>
    'Zählen Sie {count} und lesen Sie das Muster noch einmal von beiden Enden. Solange die Quetschperle offen ist, lässt sich alles ändern.',
  'check-closed': () =>
    'Schließen Sie es: {closed}. Fahren Sie mit dem Finger entlang: Kein spitzes Ende darf vorstehen, und jede Perle liegt dicht.',
};

const NAMES: Readonly<Record<StepCode, string>> = {
  'wear-eye-protection': 'Schutzbrille',
  'try-clasp': 'Verschluss ausprobieren',
  'join-chain': 'Kettchen einhängen',
  'join-ring': 'Ringe und Anhänger verbinden',
  'check-facing': 'Sehen, wohin es zeigt',
  'lay-out': 'Auslegen',
  'cut-wire': 'Draht abschneiden',
  'thread-end': 'Ein Ende auffädeln',
  'lead-back': 'Draht zurückführen',
  'check-loop': 'Schlaufe ansehen',
  crimp: 'Quetschen',
  'close-cover': 'Hülle schließen',
  'cut-tail': 'Drahtende abschneiden',
  'string-beads': 'Perlen auffädeln',
  'hang-pendant': 'Anhänger einhängen',
  'draw-up': 'Anziehen',
  measure: 'Messen',
  'check-pattern': 'Zählen',
  'check-closed': 'Schließen',
};

const TOOLS: Readonly<Record<Tool, (count: number) => string>> = {
  'eye-protection': () => 'Schutzbrille, für Sie und alle, die zusehen',
  cutters: () => 'Seitenschneider für Stahldraht, der bündig schneidet',
  'crimping-pliers': () => 'Quetschzange in der Größe der Quetschperle',
  pliers: (count) => (count === 1 ? 'Zange mit glatten Backen' : 'Zwei Zangen mit glatten Backen'),
  'split-ring-pliers': () => 'Spaltringzange',
  board: () => 'Perlenbrett oder ein Handtuch, von dem nichts rollt',
  ruler: () => 'Lineal',
  clip: () => 'Klammer oder Klebeband für das freie Drahtende, wenn Sie es weglegen',
};

const PHASES: Readonly<Record<PhaseName, string>> = {
  ready: 'Vorbereiten',
  first: 'Das Ende mit dem Verschluss',
  beads: 'Die Perlen',
  second: 'Das andere Ende',
  done: 'Zum Schluss',
};

export const teaching: typeof english = {
  title: (piece) => `${piece} selbst auffädeln`,
  titleFor: (piece, size) => `${piece} selbst auffädeln, ${size}`,
  description: (piece, size) =>
    `Wie ${piece} auf Stahldraht aufgefädelt wird, Schritt für Schritt mit Zeichnungen: Werkzeug, Perlen und Draht für ${size}, und worauf zu achten ist.`,
  asShown: 'wie gezeigt',
  for: {
    length: (length) => `${length} Länge`,
    wrist: (length) => `ein Handgelenk von ${length}`,
    ankle: (length) => `eine Fessel von ${length}`,
    neck: (length) => `einen Hals von ${length}`,
  },
  linkFromPiece: 'Selbst auffädeln: die Anleitung',
  sizes: 'Ihre Größe',
  sizesLead: {
    length: 'Die Länge des fertigen Stücks.',
    girth: 'Messen Sie eng, ohne zu ziehen. Die Größen sitzen bequem.',
  },
  sits: (less, more) =>
    `Soll es eng sitzen, nehmen Sie eine Größe ${less} kleiner als gemessen, für locker ${more} größer.`,
  comesOut: 'Fällt aus',
  print: 'Diese Größe drucken',
  tools: 'Werkzeug',
  materials: 'Was Sie brauchen',
  columns: { part: 'Was', count: 'Für das Stück', spares: 'Als Reserve' },
  wire: (name) => `Draht: ${name}`,
  cuts: (f, cutsMm) => f.list(cutsMm.map((mm) => f.ruler(mm, 'up'))),
  have: (length) => `halten Sie ${length} bereit, damit ein Ende misslingen darf`,
  chain: 'Kettchen',
  links: (f, links, length) => `${f.number(links)} Glieder, ${length}`,
  cautions: 'Bevor Sie beginnen',
  always: [
    'Abgeschnittene Enden von Stahldraht fliegen und treffen Augen. Tragen Sie eine Schutzbrille, halten Sie beide Seiten des Schnitts fest und fegen Sie die Enden auf.',
    'Perlen, Quetschperlen und Drahtenden sind Kleinteile: Halten Sie kleine Kinder vom Tisch fern und das fertige Stück von Kindern unter drei Jahren.',
  ],
  local:
    'Regeln für Schmuck und dafür, was Kinder tragen dürfen, sind von Land zu Land verschieden: Verschenken oder verkaufen Sie es, schlagen Sie die an Ihrem Ort nach.',
  picture: 'Das ausgelegte Stück',
  pictureText: 'In der Folge des Auffädelns vom Verschluss an, nummeriert wie in der Liste.',
  order: 'Folge des Auffädelns, vom Verschluss an',
  strandOf: (at, of) => `Strang ${at} von ${of}`,
  repeat: (times) => `${times} ×`,
  loop: 'Drahtschlaufe',
  halves: {
    first: (clasp) => `die eine Hälfte (${clasp})`,
    other: (clasp) => `die andere Hälfte (${clasp})`,
  },
  hangs: (pendant, rings) =>
    rings.length === 0 ? `${pendant}, an der eigenen Öse` : `${pendant} an ${rings.join(', ')}`,
  plain: { clasp: 'Verschluss', ring: 'Ring', crimp: 'Quetschperle', cover: 'Hülle', pendant: 'Anhänger' },
  steps: 'Schritt für Schritt',
  phases: PHASES,
  otherHand: {
    left: 'Ausgelegt für eine rechte Hand, die den Verschluss bedient. Für die linke legen Sie den Verschluss auf die andere Seite; alles Übrige bleibt.',
    right:
      'Ausgelegt für eine linke Hand, die den Verschluss bedient. Für die rechte legen Sie den Verschluss auf die andere Seite; alles Übrige bleibt.',
  },
  estimate: (time) => `Etwa ${time} für geübte Hände; nehmen Sie sich das Doppelte.`,
  stages: {
    wire: 'Der Draht zum Abschneiden',
    end: 'Das Ende, wie es jetzt aussieht',
    joined: 'Ringe und Anhänger verbunden',
    hung: 'Der Anhänger auf dem Draht',
    closed: 'Das fertige Stück, geschlossen',
  },
  backToPiece: (piece) => `${piece} im Laden`,
  bench: {
    title: (piece) => `${piece} als Anleitung`,
    lead: 'Für alle, die es lernen wollen, in der Folge Ihrer eigenen Karte, aus demselben Stück gemacht. Schreiben Sie mit Ihren Worten, was Sie jemandem an Ihrem Tisch sagen würden; was Sie leer lassen, wird wie üblich erklärt. Im Laden steht es erst, wenn Sie es anbieten.',
    isOffered: 'Es hat eine Seite im Laden, in jeder Größe seiner Tabelle.',
    show: 'Zeigen',
    shownIn: 'Gezeigt für',
    places: (places) =>
      places.length === 0
        ? ''
        : ` Lassen Sie ${places.map((one) => `{${one}}`).join(', ')} stehen: Der Laden setzt ein, was die Größe verlangt.`,
    usually: (text) => `Wie üblich: „${text}“`,
  },
  ownLead: 'Von der Macherin',
  names: NAMES,
  usual: (step) => sentenceOf(usual, step),
  toolName: (tool, count) => TOOLS[tool](count),
  step: (step, f, name, own) =>
    teachSentence(
      step,
      own,
      (one) => sentenceOf(usual, one),
      (one) => sentenceOf(phrases, one, f, name),
    ),
};
