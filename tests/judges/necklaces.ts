/** Random necklaces as bare fitting problems, lengths in tenths of a millimetre. */
import type { Measure } from '#core/solver/measure.ts';
import type { FitProblem, FitSection } from '#core/solver/problem.ts';
import type { Random } from '#tests/core/random.ts';

export type Necklace = {
  readonly problem: FitProblem;
  readonly measure: Measure;
  readonly baseHundredths: number;
  readonly eachHundredths: readonly number[];
};

const NM = 10_000;

/** @param counted components that are counted. */
export function necklace(
  of: Random,
  sections: number,
  mostRepeats: number,
  counted = of.next() < 0.25 ? 1 : 0,
): Necklace {
  const made = Array.from({ length: sections }, (_, at): FitSection => {
    const fewest = of.whole(0, 3);
    const most = fewest + of.whole(1, mostRepeats);
    const usual = of.whole(fewest, most);
    const cost = of.whole(1, 8);
    return {
      id: `s${at}`,
      usual,
      fewest,
      most,
      cost,
      partsPerRepeat: of.whole(1, 5),
      takes: Array.from({ length: counted }, () => of.whole(0, 2)),
    };
  });
  const baseHundredths = 10 * of.whole(300, 1200);
  const eachHundredths = made.map(() => 10 * of.whole(15, 320));
  const spanNm = (counts: readonly number[]): { lowNm: number; highNm: number } => {
    const hundredths = eachHundredths.reduce(
      (sum, each, at) => sum + each * (counts[at] ?? 0),
      baseHundredths,
    );
    return { lowNm: hundredths * NM, highNm: hundredths * NM };
  };
  const stock = Array.from({ length: counted }, (_, which) => {
    const fewestUse = made.reduce((sum, section) => sum + section.takes[which]! * section.fewest, 0);
    return { component: `counted${which}`, left: fewestUse + of.whole(0, 4 * mostRepeats) };
  });
  return {
    problem: { sections: made, stock },
    measure: {
      of: spanNm,
      least: spanNm,
      most: spanNm,
      zeroApart: false,
      guessNm: (counts) => spanNm(counts).lowNm,
      guessOffNm: 0,
      eachNm: eachHundredths.map((each) => each * NM),
    },
    baseHundredths,
    eachHundredths,
  };
}
