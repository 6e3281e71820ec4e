/** Die Schritte an der Werkbank, wie die Macherin sie sich selbst sagen würde. */
import type { Step, StepArgs } from '#core/instructions/step.ts';
import type { NameOf } from '../en/steps.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';

const SIDE = { left: 'links', right: 'rechts' };

/** Worum eine Schlaufe führt; '', wo um nichts. */
export function round(
  { held, finding }: StepArgs['check-loop'] | StepArgs['join-chain'],
  name: NameOf,
): string {
  const what = finding === null ? '' : name(finding);
  return {
    whole: what,
    'first-half': `die eine Hälfte (${what})`,
    'other-half': `die andere Hälfte (${what})`,
    chain: 'das letzte Glied der Kette',
    nothing: '',
  }[held];
}

const beadsOf = (count: number, f: Format): string =>
  count === 1 ? 'die letzte Perle' : `die letzten ${f.number(count)} Perlen`;

/** Weniger Spiel sieht man nicht, geschweige denn, dass man es nach Augenmaß lässt. */
export const SEEN_MM = 1;

const steps: Sentences<Step, [f: Format, name: NameOf]> = {
  'wear-eye-protection': () => 'Schutzbrille auf, bis zum Schluss: Abgeschnittene Drahtenden fliegen.',
  'try-clasp': ({ args: { clasp, inHalves } }, _, name) => {
    const tried = `${name(clasp)} ein paarmal öffnen und schließen: Ein schwergängiger lässt sich später nicht mehr tauschen.`;
    return inHalves ? `${tried} Dann trennen: Je eine Hälfte kommt an ein Ende.` : tried;
  },
  'join-chain': ({ args }, f, name) =>
    `${args.links === null ? '' : `${f.number(args.links)} Glieder, `}${f.ruler(args.chainMm)} Kettchen nehmen. Das Glied an einem Ende nach vorn und hinten öffnen, nie auseinander, dort einhängen und schließen: ${round(args, name)}.`,
  'join-ring': ({ args: { ring, joint, above, below } }, f, name) => {
    const taken = f.list([below, above].filter((id) => id !== null).map(name));
    return joint === 'open'
      ? `${name(ring)}: nach vorn und hinten aufbiegen, nie auseinander. Einhängen: ${taken}. Ebenso schließen, bis die Enden aneinanderliegen.`
      : `${name(ring)}: eindrehen, bis beide Windungen halten: ${taken}.`;
  },
  'check-facing': ({ args: { pendant, addRings } }, _, name) =>
    addRings === 0
      ? `Hochhalten, wie es hängen wird: ${name(pendant)} zeigt nach vorn.`
      : `So wie geplant dreht sich ${name(pendant)} zur Seite: Ein Ring mehr, und die Vorderseite zeigt nach vorn.`,
  'lay-out': ({ args: { claspSide } }) => {
    const side = claspSide === null ? '' : `, den Verschluss ${SIDE[claspSide]}`;
    return `Alles auf dem Brett auslegen, von null nach beiden Seiten${side}, und ansehen.`;
  },
  'cut-wire': ({ args: { wire, lengthMm } }, f, name) =>
    `Abschneiden: ${f.ruler(lengthMm, 'up')} ${name(wire)}.`,
  'thread-end': ({ args: { crimp, guard, way, ...args } }, f, name) => {
    const held = round(args, name);
    const eye = way === null ? '' : `, Öse ${f.number(way)}`;
    const things = [name(crimp), guard === null ? '' : name(guard), held === '' ? '' : `${held}${eye}`];
    return `Auffädeln: ${things.filter((one) => one !== '').join(', dann ')}.`;
  },
  'lead-back': ({ args: { loopMm, beads, outMm, ...args } }, f, name) => {
    const held = round(args, name);
    const through = beads === 0 ? 'die Quetschperle' : `die Quetschperle und ${beadsOf(beads, f)}`;
    const out = outMm === null ? '' : `, bis ${f.ruler(outMm)} herausstehen`;
    const loop = `${f.ruler(loopMm)} ${held === '' ? 'für den Verschluss' : `(${held})`}`;
    return `Zurück durch ${through}${out}. Schlaufe: ${loop}, erst ein wenig größer, denn das Quetschen zieht sie zu.`;
  },
  'check-loop': ({ args }, _, name) => {
    const held = round(args, name);
    const wires = 'In der Quetschperle liegen beide Drähte nebeneinander, nicht gekreuzt';
    return held === '' ? `${wires}.` : `${wires}; frei beweglich: ${held}.`;
  },
  crimp: () =>
    'Mit zwei Griffen quetschen, erst die Kerbe, dann rund, und nicht öfter. Mit einem Zug prüfen.',
  'close-cover': ({ args: { cover } }, _, name) =>
    `Darüber schließen: ${name(cover)}, ist sie eng, erst ein wenig geöffnet, die Naht nach hinten.`,
  'cut-tail': ({ args: { bead } }, f) =>
    bead === null
      ? 'Vom Gesicht weg das Drahtende bündig an der Quetschperle abschneiden: Keine Perle hier nimmt es auf, verstecken lässt es sich nicht.'
      : `Vom Gesicht weg das Drahtende bündig abschneiden, wo es Perle ${f.number(bead)} verlässt, ohne den Draht darin zu berühren. Den Stumpf hineindrücken.`,
  'string-beads': ({ args: { first, last, overTail } }, f) => {
    const which =
      first === last ? `Perle ${f.number(first)}` : `Perle ${f.number(first)} bis ${f.number(last)}`;
    return overTail
      ? `${which} über Draht und Drahtende zusammen auffädeln, dicht heran.`
      : `${which} auffädeln.`;
  },
  'hang-pendant': ({ args: { pendant, rings } }, _, name) => {
    const by = rings === 0 ? 'seine eigene Öse' : rings === 1 ? 'seinen Ring' : 'seinen obersten Ring';
    return `Hier hängt ${name(pendant)}: ${by} auffädeln.`;
  },
  'draw-up': ({ args: { slackMm, roomMm } }, f) => {
    const slack =
      slackMm < SEEN_MM
        ? 'kein Spiel, das man sieht. Zum Ring gebogen berühren sich die Nachbarn, keiner steht ab'
        : `${f.ruler(slackMm)} Draht an der letzten Perle bloß. Zum Ring gebogen steht keine ab, nichts spannt`;
    const room =
      roomMm === 0
        ? ''
        : ' Die offene Hülle, über die Quetschperle gehalten, berührt gerade die letzte Perle.';
    return `Den Draht anziehen: ${slack}.${room}`;
  },
  measure: ({ args: { lengthMm, chained } }, f) =>
    `Gerade messen, mit allem daran, von wo das eine Ende trägt bis wo das andere trägt${chained ? ', das Kettchen nicht mitgezählt' : ''}: ${f.ruler(lengthMm)}.`,
  'check-pattern': ({ args: { count } }, f) =>
    `${f.number(count)} zählen und das Muster noch einmal von beiden Enden lesen: Noch lässt es sich ändern.`,
  'check-closed': ({ args: { lengthMm, chainMm, chainUsedMm, links, link } }, f) => {
    if (chainMm === 0) return `Schließen: ${f.ruler(lengthMm)}, und kein spitzes Ende steht vor.`;
    const used =
      chainUsedMm === 0
        ? ', wie es diese Größe will'
        : link !== null
          ? `; im ${link}. Glied, wie es diese Größe will: ${f.ruler(lengthMm + chainUsedMm)}`
          : `; im Glied, das ${f.ruler(chainUsedMm)} weiter am Kettchen am nächsten kommt, wie es diese Größe will: etwa ${f.ruler(lengthMm + chainUsedMm)}`;
    const last = links === null ? 'am letzten Glied' : `im letzten Glied, dem ${links}.`;
    return `Vor dem Kettchen schließen: ${f.ruler(lengthMm)}${used}; ${last}: ${f.ruler(lengthMm + chainMm)}. Jedes Glied nimmt den Verschluss, und kein spitzes Ende steht vor.`;
  },
};

/** Der Satz zu einem Schritt. */
export const step = (one: Step, f: Format, name: NameOf): string => sentenceOf(steps, one, f, name);
