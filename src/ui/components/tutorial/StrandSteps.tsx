/** One strand: laid out and numbered, its list, and its steps, each with a drawing of how it looks then. */
import { groupText, type Group, type GroupPart } from '#core/instructions/groups.ts';
import type { PlacedStep } from '#core/instructions/phases.ts';
import { isCaution, type Step } from '#core/instructions/step.ts';
import { drawStage } from '../../models/stagePicture.ts';
import { drawStrandPicture } from '../../models/strandPicture.ts';
import type { Told } from './told.ts';

type Props = Told & { readonly strand: number };

export function StrandSteps(props: Props) {
  const { tutorial, words, strand } = props;
  const strands = tutorial.groups.length;
  return (
    <section class="taught">
      {strands > 1 && <h3>{words.strandOf(strand + 1, strands)}</h3>}
      <LaidOut {...props} />
      {(tutorial.phases[strand] ?? []).map(({ name, steps }) => (
        <div class="phase">
          {strands > 1 ? <h4>{words.phases[name]}</h4> : <h3>{words.phases[name]}</h3>}
          <ol start={(steps[0]?.at ?? 0) + 1}>
            {steps.map((step) => (
              <OneStep {...props} placed={step} />
            ))}
          </ol>
        </div>
      ))}
    </section>
  );
}

/** The picture that all steps speak of, and the list with its numbers. */
function LaidOut({ tutorial, words, format, unit, strand, nameOf }: Props) {
  const { design, candidate, card } = tutorial;
  const groups = tutorial.groups[strand] ?? [];
  const told = { title: words.picture, description: words.pictureText };
  const html = drawStrandPicture(design, candidate, card, strand, groups, {
    board: told,
    rows: told,
    idPrefix: `laid-${strand}`,
    unit,
  });
  const rings = card.pendant?.rings ?? [];
  const partText = ({ kind, component }: GroupPart): string => {
    if (component === null) return words.loop;
    const name = nameOf(component);
    if (kind === 'pendant') return words.hangs(name, rings.map(nameOf));
    if (kind === 'other-half') return words.halves.other(name);
    return kind === 'clasp' && card.ends.held.clasp.what === 'first-half' ? words.halves.first(name) : name;
  };
  const numbers = ({ numbers: found }: Group): string => {
    if (found === null) return '';
    const [first, last] = [format.number(found.first), format.number(found.last)];
    return first === last ? first : `${first}–${last}`;
  };
  return (
    <>
      <div
        class="laid"
        tabIndex={0}
        role="group"
        aria-label={words.picture}
        dangerouslySetInnerHTML={{ __html: html }}
      />
      <p id={`order-${strand}`}>{words.order}:</p>
      <ul class="order" aria-labelledby={`order-${strand}`}>
        {groups.map((group) => (
          <li>
            <span class="numbers">{numbers(group)}</span>{' '}
            <span>
              {group.repeats > 1 && `${words.repeat(group.repeats)} `}
              {groupText(group, partText)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function OneStep({ placed: { at, step }, ...told }: Props & { readonly placed: PlacedStep }) {
  const { tutorial, words, format } = told;
  const text = sentenceOf(step, told);
  const stage = tutorial.stages[at] ?? null;
  const picture =
    stage === null
      ? null
      : drawStage(tutorial, stage, words.stages, {
          label: (mm) => format.ruler(mm, 'up'),
          description: text,
          idPrefix: `step-${at}`,
        });
  return (
    <li class={isCaution(step.code) ? 'caution' : undefined}>
      {picture !== null && <div class="stage" dangerouslySetInnerHTML={{ __html: picture }} />}
      <p>{text}</p>
    </li>
  );
}

/** Rings and pendants that are joined go by their names, since there may be several. */
function sentenceOf(step: Step, { tutorial, words, format, nameOf, plainOf }: Told): string {
  const name = step.code === 'join-ring' ? nameOf : plainOf;
  return words.step(step, format, name, tutorial.own.steps);
}
