/** Where no piece meets what was asked for: what can be had instead, and why. Nothing where one does. */
import type { Pick } from '#core/design/choice.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import type { Format } from '#words/format.ts';
import type { SizedWords } from '#words/words.ts';
import type { Sized } from '../model/outcome.ts';
import { Choices } from '../controls/Choices.tsx';
import { Helps, type AskedOf } from './Helps.tsx';

export type VerdictProps = {
  readonly words: SizedWords;
  readonly format: Format;
  readonly id: string;
  readonly design: Design;
  readonly sizing: Sized;
  readonly asked: AskedOf;
  readonly onPick: (pick: Pick) => void;
  /** Show the piece at that measure, as the buyer measures. */
  readonly onTake: (askedMm: number) => void;
};

export function Verdict(props: VerdictProps) {
  const { sizing } = props;
  if (sizing.status === 'fits') return null;
  if (sizing.status === 'outside') return <Outside {...props} sizing={sizing} />;
  return <Near {...props} sizing={sizing} />;
}

type Of<Status> = Extract<Sizing, { status: Status }>;

function Near({
  words,
  format,
  id,
  design,
  sizing,
  asked,
  onPick,
}: VerdictProps & { readonly sizing: Of<'fits' | 'near'> }) {
  const option = (value: 'below' | 'above', candidate: Candidate | null) =>
    candidate === null
      ? []
      : [
          {
            value,
            label: words.nearOption(format, sizing.targetMm, candidate.errorMm),
            hint: `${format.length(candidate.fittedMm)}, ${format.money(candidate.priceMinor)}`,
          },
        ];
  return (
    <div class="sizer-near">
      <p>{words.near(format, sizing.targetMm, sizing.toleranceMm)}</p>
      <Choices
        name={`${id}-pick`}
        legend={words.nearLegend}
        options={[...option('below', sizing.below), ...option('above', sizing.above)]}
        value={sizing.chosen.errorMm < 0 ? 'below' : 'above'}
        onChange={onPick}
      />
      <Helps
        words={words}
        format={format}
        design={design}
        help={sizing.help}
        choice={sizing.choice}
        asked={asked}
      />
    </div>
  );
}

function Outside({
  words,
  format,
  design,
  sizing,
  asked,
  onTake,
}: VerdictProps & { readonly sizing: Of<'outside'> }) {
  const { side, limits, choice } = sizing;
  const binds = side === 'below' ? limits.leastBinds : limits.mostBinds;
  const askedMm = side === 'below' ? limits.leastAskedMm : limits.mostAskedMm;
  return (
    <div class="sizer-outside">
      <p>{words.outside(format, side, choice.measure.of, limits)}</p>
      {binds.length > 0 && <p>{words.outsideWhy(side)}</p>}
      {side === 'above' && limits.mostStock.length > 0 && (
        <p>
          {words.outOfStock(
            format,
            limits.mostStock.map((id) => design.components[id]?.name ?? id),
          )}
        </p>
      )}
      <button type="button" class="button plain" onClick={() => onTake(askedMm)}>
        {words.takeNearest(format, askedMm)}
      </button>
      <Helps
        words={words}
        format={format}
        design={design}
        help={sizing.help}
        choice={sizing.choice}
        asked={asked}
      />
    </div>
  );
}
