/** Was die Macherin beim Auffädeln liest. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { FigureProblem } from '#core/body/figure.ts';
import type { StrengthCaveat } from '#core/instructions/strength.ts';
import type { stringing as en } from '../en/stringing.ts';
import type { Sentences } from '../sentence.ts';
import { step } from './steps.ts';

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
  step,
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
  tail: ({ blockedBy, fitsWireMm, needMm, reachMm }, f, name) => {
    if (blockedBy === null) return `Der doppelte Draht geht ${f.ruler(reachMm)} weit hinein.`;
    const bead = `${name(blockedBy.component)} (Nummer ${f.number(blockedBy.position)} ab der Quetschperle, Loch ${f.number(blockedBy.holeMm, 2)} mm)`;
    return `${bead} ist nach ${f.ruler(reachMm)} im Weg: Es bräuchte ein Loch von ${f.number(needMm, 2)} mm oder Draht von ${f.number(fitsWireMm ?? 0, 2)} mm.`;
  },
  balance: ({ offMm, heavierG }, f) => {
    const side = (value: number) => (value > 0 ? 'zur Verschlussseite' : 'zur anderen Seite');
    const length = `Die Mitte liegt ${f.ruler(Math.abs(offMm))} ${side(-offMm)} hin`;
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
      return `In der Mitte liegt eine Perle: Der Anhänger hängt ${f.ruler(Math.abs(offMiddleMm))} daneben.`;
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
