/** What stands in the way of an assessment, calmly: what is wrong, where, and what is allowed. */
import type { Problem } from './findings';
import { OpenSite } from './open_site';
import { strings } from './strings';

const words = strings.problemList;

export function ProblemList({ label, problems }: { label: string; problems: Problem[] }) {
  return (
    <section class="problems" aria-labelledby="problems-heading">
      <h1 id="problems-heading">{words.heading(label)}</h1>
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
