/** What the core says of what lies there: what to mend first, each leading to its place; then the figures. */
import type { Design } from '#core/design/design.ts';
import type { Answers, Figures, Where } from '../model/answers.ts';
import { findingsSaid, whereName } from '../model/said.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly design: Design;
  readonly answers: Answers;
  readonly listedMinor: number | null;
  readonly talk: Talk;
  readonly onShow: (where: Where) => void;
};

export function AnswersView({ design, answers, listedMinor, talk, onShow }: Props) {
  const { words } = talk;
  const { figures, findings } = answers;
  const said = findingsSaid(findings, talk);
  return (
    <section class="answers" aria-labelledby="answers-heading">
      <h2 id="answers-heading">{words.findings.heading}</h2>
      {said.length === 0 && <p class="good">{words.findings.fine}</p>}
      <ul class="findings">
        {said.map(({ finding, text }) => (
          <li class={finding.stop ? 'stop' : undefined}>
            {text}{' '}
            {finding.where !== 'piece' && (
              <button type="button" class="plain" onClick={() => onShow(finding.where)}>
                {words.findings.show}: {whereName(design, finding.where, talk)}
              </button>
            )}
          </li>
        ))}
      </ul>
      <h2>{words.figures.heading}</h2>
      {figures === null ? (
        <p class="quiet">{words.figures.notYet}</p>
      ) : (
        <FigureList figures={figures} listedMinor={listedMinor} talk={talk} />
      )}
    </section>
  );
}

type FigureProps = { readonly figures: Figures; readonly listedMinor: number | null; readonly talk: Talk };

/** Every figure with its name, in the order in which she asks for them. */
export function figureRows({ figures, listedMinor, talk }: FigureProps): (readonly [string, string])[] {
  const { words, f } = talk;
  const { figures: label } = words;
  return [
    [label.length, f.ruler(figures.lengthMm)],
    [label.girth, f.ruler(figures.girthMm)],
    [label.mass, `${f.number(figures.massG, 1)} g`],
    [label.beads, f.number(figures.beads)],
    [label.minutes, label.minutesValue(figures.minutes, f)],
    [label.materials, f.money(figures.materialsMinor)],
    [label.rule, f.money(figures.ruleMinor)],
    ...(listedMinor === null ? [] : [[label.listed, f.money(listedMinor)] as const]),
    [label.cut, f.ruler(figures.cutMm, 'up')],
    [label.slack, f.fine(figures.slackMm)],
    [label.strength, label.strengthValue(figures.strengthFactor, f)],
  ];
}

function FigureList(props: FigureProps) {
  return (
    <dl class="figures">
      {figureRows(props).map(([label, value]) => (
        <div>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
