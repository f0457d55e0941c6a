/** What is wrong and what is allowed, as the language of the screens shows it. */
import { EngineText, engineText } from './engine_text';
import type { Problem } from './findings';
import { strings } from './strings';

/** What the screens find amiss themselves is in their language already. */
function isOfEngine(problem: Problem): boolean {
  return problem.sentence !== undefined;
}

/** Words of a problem in the page. */
export function ProblemText({ problem, text }: { problem: Problem; text: string }) {
  return isOfEngine(problem) ? <EngineText text={text} /> : <>{text}</>;
}

/** What is wrong, and what is allowed where that is told. */
export function ProblemWords({ problem }: { problem: Problem }) {
  const { what, allowed } = problem;
  return (
    <>
      <ProblemText problem={problem} text={what} />
      {allowed && (
        <>
          {' '}
          {strings.form.allowed} <ProblemText problem={problem} text={allowed} />
        </>
      )}
    </>
  );
}

/** The same as text alone. */
export function problemWords(problem: Problem): string {
  const { what, allowed } = problem;
  const said = isOfEngine(problem) ? engineText : (text: string) => text;
  return allowed === '' ? said(what) : `${said(what)} ${strings.form.allowed} ${said(allowed)}`;
}
