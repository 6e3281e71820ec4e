/** What is wrong in the files, and how to mend it, as the check says it. */
import { explain, type Problem } from '#catalogue/read/problem.ts';
import type { Lang } from '#words/lang.ts';

type Props = { readonly problems: readonly Problem[]; readonly lang: Lang };

export function ProblemList({ problems, lang }: Props) {
  return (
    <ul>
      {problems.map((problem) => {
        const { what, fix } = explain(problem, lang);
        return (
          <li>
            <span class="quiet">
              {problem.file}
              {problem.field !== '' && `, ${problem.field}`}
            </span>
            <br />
            {what} {fix}
          </li>
        );
      })}
    </ul>
  );
}
