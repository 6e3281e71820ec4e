/** Was die Macherin beim Auffädeln liest. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { FigureProblem } from '#core/body/figure.ts';
import type { StrengthCaveat } from '#core/instructions/strength.ts';
import type { Step, StepArgs, StepCode } from '#core/instructions/steps.ts';
import type { NameOf, stringing as en } from '../en/stringing.ts';
import type { Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';

type Sentence<Args> = (args: Args, f: Format, name: NameOf) => string;

const end = (which: 'clasp' | 'ring'): string => (which === 'clasp' ? 'Verschlussende' : 'anderen Ende');

const steps: { readonly [Code in StepCode]: Sentence<StepArgs[Code]> } = {
  'wear-eye-protection': () => 'Schutzbrille auf: Abgeschnittene Drahtenden fliegen.',
  'try-clasp': ({ clasp }, _, name) =>
    `${name(clasp)} ein paarmal öffnen und schließen, bevor er daran ist; später lässt er sich nicht mehr tauschen.`,
  'cut-wire': ({ wire, lengthMm }, f, name) => `${f.fine(Math.ceil(lengthMm))} ${name(wire)} abschneiden.`,
  'thread-end': (args, _, name) =>
    `Am ${end(args.end)}: erst ${name(args.crimp)} auffädeln, dann ${name(args.finding)}.`,
  'guard-loop': ({ guard }, _, name) => `${name(guard)} dort über den Draht ziehen, wo die Schlaufe trägt.`,
  'make-loop': ({ finding, loopMm }, f, name) =>
    `Den Draht durch die Quetschperle zurückführen: eine Schlaufe von ${f.fine(loopMm)} (${name(finding)}).`,
  'wires-side-by-side': () =>
    'In die Quetschperle schauen: Beide Drähte liegen nebeneinander und kreuzen sich nicht.',
  'loop-free': ({ finding }, _, name) => `${name(finding)} bewegt sich frei in der Schlaufe.`,
  crimp: (args) => `Die Quetschperle am ${end(args.end)} quetschen und mit einem Zug prüfen.`,
  'hide-tail': ({ end: which, tailMm, beads }, f) => {
    if (beads === 0)
      return 'Keine Perle hier nimmt den doppelten Draht auf: Das Ende lässt sich nicht verstecken.';
    const what = beads === 1 ? 'das Teil' : `${f.number(beads)} Teile`;
    return which === 'clasp'
      ? `Über Draht und Drahtende zusammen kommen als Erstes: ${what}, für ${f.fine(tailMm)} Drahtende.`
      : `${f.fine(tailMm)} Drahtende durch die letzten Teile zurückführen: ${f.number(beads)}.`;
  },
  'string-beads': ({ count }, f) => `${f.number(count)} Teile in der Reihenfolge der Liste auffädeln.`,
  'hang-pendant': ({ pendant, rings }, f, name) =>
    rings === 0
      ? `${name(pendant)} kommt in der Mitte direkt auf den Draht.`
      : `${name(pendant)} kommt in der Mitte darauf, an ${f.number(rings)} ${rings === 1 ? 'Ring' : 'Ringen'}.`,
  'check-facing': ({ pendant, addRings }, _, name) =>
    addRings === 0
      ? `${name(pendant)} hängen lassen: Die Vorderseite zeigt nach vorn.`
      : `So wie geplant dreht sich ${name(pendant)} zur Seite: Ein Ring mehr, und die Vorderseite zeigt nach vorn.`,
  'check-pattern': ({ count, lengthMm }, f) =>
    `Vor der zweiten Quetschperle: ${f.number(count)} zählen, das Muster von beiden Enden lesen, mit Verschluss und Ring ${f.fine(lengthMm)} messen.`,
  'leave-slack': ({ slackMm }, f) =>
    `${f.fine(slackMm)} Draht zwischen den Perlen frei lassen, damit sich der geschlossene Strang biegen kann.`,
  'cut-away-from-face': () =>
    'Die Enden nach unten und vom Gesicht weg abschneiden, mit Schutzbrille; jeden Abschnitt einsammeln.',
  'close-cover': () => 'Über jeder Quetschperle eine Hülle schließen, die Naht nach hinten.',
  'check-closed': ({ lengthMm }, f) =>
    `Schließen und messen: ${f.fine(lengthMm)}. Nirgends steht ein spitzes Ende vor.`,
};

const caveats: Readonly<Record<StrengthCaveat, string>> = {
  'no-crimp-loss': 'Was das Quetschen kostet, ist nicht enthalten.',
  'bare-metal-estimate':
    'Eine Schätzung für blanke Stahllitze; für so feinen ummantelten Draht ist kein veröffentlichter Wert bekannt.',
  'coating-assumed': 'Die Dicke der Ummantelung ist angenommen.',
  'strands-assumed': 'Der Aufbau der Litze ist nicht bekannt; gerechnet ist mit dem schwächsten bekannten.',
};

const assumptions: Readonly<Record<AssumptionCode, string>> = {
  'chest-slope': 'Angenommen ist, dass die Brust 20° gegen die Senkrechte geneigt ist.',
  'zero-at-pit': 'Angenommen ist, dass ein Strang vom Umfang des Halsansatzes in der Halsgrube liegt.',
  'mean-neck': 'Der Hals ist der Mittelwert der Gruppe: Ein Maß wäre sicherer.',
  'mean-height': 'Die Körpergröße ist der Mittelwert der Gruppe.',
  pooled: 'Frauen und Männer sind zusammengenommen.',
  'adult-lines': 'Die Proportionen sind die von Erwachsenen.',
};

const figureProblems: Sentences<FigureProblem> = {
  'under-two': () =>
    'Für ein Kind unter zwei Jahren wird nichts vorgeschlagen. Schnüre, Drähte und Kleinteile an Hals oder Handgelenk eines Säuglings können töten.',
  'no-child': ({ mostYears }, f) => `Die Maße für Kinder enden bei ${f.number(mostYears)} Jahren.`,
  'girth-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} kann kein Halsumfang sein: Er liegt zwischen ${f.length(leastMm)} und ${f.length(mostMm)}.`,
  'height-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} kann keine Körpergröße sein: Sie liegt zwischen ${f.length(leastMm)} und ${f.length(mostMm)}.`,
};

/** Darunter unterscheidet keine Waage an der Werkbank die Seiten. */
const EVEN_G = 0.05;

export const stringing: typeof en = {
  step: (step: Step, f: Format, name: NameOf) =>
    (steps[step.code] as Sentence<Step['args']>)(step.args, f, name),
  caveats,
  assumptions,
  figureProblems,
  crimp: ({ crimp, fit, insideMm, needMm, wires }, f, name) => {
    const need = needMm === null ? '' : `; ${f.number(wires)} Drähte brauchen ${f.number(needMm, 2)} mm`;
    const inside = `${name(crimp)}, innen ${f.number(insideMm, 2)} mm${need}`;
    if (fit === 'fits') return `${inside}.`;
    return fit === 'tight' ? `${inside}: zu eng.` : `${inside}: zu weit, sie hält vielleicht nicht.`;
  },
  cover: ({ cover, fit, takesMm, closedMm }, f, name) => {
    const what = `${name(cover)}, für Quetschperlen bis ${f.number(takesMm, 2)} mm; diese misst geschlossen ${f.number(closedMm, 2)} mm`;
    if (fit === 'fits') return `${what}.`;
    return fit === 'tight' ? `${what}: Sie geht nicht zu.` : `${what}: Sie sitzt lose.`;
  },
  tail: ({ blockedBy, fitsWireMm, needMm, reachMm, tailMm }, f, name) => {
    if (blockedBy === null) return `Der doppelte Draht geht ${f.fine(tailMm)} weit hinein.`;
    const bead = `${name(blockedBy.component)} (Nummer ${f.number(blockedBy.position)} ab der Quetschperle, Loch ${f.number(blockedBy.holeMm, 2)} mm)`;
    return `${bead} ist nach ${f.fine(reachMm)} im Weg: Es bräuchte ein Loch von ${f.number(needMm, 2)} mm oder Draht von ${f.number(fitsWireMm ?? 0, 2)} mm.`;
  },
  balance: ({ offMm, heavierG }, f) => {
    const side = (value: number) => (value > 0 ? 'zur Verschlussseite' : 'zur anderen Seite');
    const length = `Die Mitte liegt ${f.fine(Math.abs(offMm))} ${side(-offMm)} hin`;
    if (Math.abs(heavierG) < EVEN_G) return `${length}; beide Seiten wiegen gleich viel.`;
    const heavy = heavierG > 0 ? 'die Verschlussseite' : 'die andere Seite';
    return `${length}; ${heavy} ist um ${f.number(Math.abs(heavierG), 1)} g schwerer.`;
  },
  guard: ({ guard, holeMm, needMm, passes }, f, name) =>
    `${name(guard)}, Loch ${f.number(holeMm, 2)} mm: ${passes ? 'nimmt den Draht auf' : `zu klein für Draht von ${f.number(needMm, 2)} mm`}.`,
  facing: ({ rings, faces, addRings }, f) =>
    faces === 'front'
      ? `An ${f.number(rings)} ${rings === 1 ? 'Ring' : 'Ringen'} zeigt der Anhänger nach vorn.`
      : `An ${f.number(rings)} ${rings === 1 ? 'Ring' : 'Ringen'} dreht sich der Anhänger zur Seite: ${f.number(addRings)} mehr.`,
  centred: ({ centred, offMiddleMm }, f) => {
    if (offMiddleMm !== 0)
      return `In der Mitte liegt eine Perle: Der Anhänger hängt ${f.fine(Math.abs(offMiddleMm))} daneben.`;
    return centred
      ? 'Er hängt zwischen zwei gleichen Teilen, also mittig und frei.'
      : 'Die Teile links und rechts sind verschieden: Er wird sich zu einem neigen.';
  },
  flexibility: { stiff: 'steif', supple: 'geschmeidig', softest: 'am weichsten' },
  massBasis: {
    weighed: 'gewogen',
    volume: 'aus Maß und Material geschätzt, auf einige Prozent',
    rough: 'grob geschätzt: Form oder Material ist geraten',
  },
};
