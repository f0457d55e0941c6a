/** What stands in the way of an assessment, calmly: what is wrong, where, and what is allowed. */
import type { Problem } from './findings';
import { useHeadingFocus } from './heading_focus';
import { OpenSite } from './open_site';
import { askedByUser } from './site_assessment';
import { strings } from './strings';

const words = strings.problemList;

export function ProblemList({ label, problems }: { label: string; problems: Problem[] }) {
  const heading = useHeadingFocus(askedByUser.value);
  return (
    <section class="problems" aria-labelledby="problems-heading">
      <h1 id="problems-heading" ref={heading} tabIndex={-1}>
        {words.heading(label)}
      </h1>
      <p>{words.intro(problems.length)}</p>
      <ol>
        {problems.map((problem) => (
          <li>
            {(problem.file || problem.where) && (
              <p class="place">
                {problem.file && <span class="file">{problem.file}</span>}
                {problem.where && <span class="where">{problem.where}</span>}
              </p>
            )}
            <p class="what">{problem.what}</p>
            {problem.allowed && (
              <p class="allowed">
                <b>{words.allowed}</b> {problem.allowed}
              </p>
            )}
          </li>
        ))}
      </ol>
      <OpenSite />
    </section>
  );
}
