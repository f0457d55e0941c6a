/** What stands in the way of an assessment, calmly: what is wrong, where, and what is allowed. */
import { ProblemText } from './engine_problem';
import type { Problem } from './findings';
import { useHeadingFocus } from './heading_focus';
import { OpenSite } from './open_site';
import { askedByUser } from './site_assessment';
import { strings } from './strings';

const words = strings.problemList;

function Where({ problem }: { problem: Problem }) {
  if (!problem.file && !problem.where) return null;
  return (
    <p class="place">
      {problem.file && <span class="file">{problem.file}</span>}
      {problem.where && <span class="where">{problem.where}</span>}
    </p>
  );
}

/** Problems one below the other; nothing where there are none. */
export function ProblemLines({ problems }: { problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <ol class="problem-lines">
      {problems.map((problem) => (
        <li>
          <Where problem={problem} />
          <p class="what">
            <ProblemText problem={problem} text={problem.what} />
          </p>
          {problem.allowed && (
            <p class="allowed">
              <b>{words.allowed}</b> <ProblemText problem={problem} text={problem.allowed} />
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}

export function ProblemList({ label, problems }: { label: string; problems: Problem[] }) {
  const heading = useHeadingFocus(askedByUser.value);
  return (
    <section class="problems" aria-labelledby="problems-heading">
      <h1 id="problems-heading" ref={heading} tabIndex={-1}>
        {words.heading(label)}
      </h1>
      <p>{words.intro(problems.length)}</p>
      <ProblemLines problems={problems} />
      <OpenSite />
    </section>
  );
}
