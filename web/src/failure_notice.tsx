/** The engine cannot answer: why, in a sentence, and what to do. */
import type { EngineFailure } from './engine_client';
import { tryAgain } from './site_assessment';
import { strings } from './strings';

const words = strings.failures;

export function FailureNotice({ failure }: { failure: EngineFailure }) {
  return (
    <section class="failure" role="alert">
      <h1>{words.heading}</h1>
      <p>{words.sentences[failure.kind]}</p>
      {failure.kind !== 'unsupported' && (
        <button type="button" class="button" onClick={tryAgain}>
          {words.retry}
        </button>
      )}
      {failure.detail && (
        <details class="in-words">
          <summary>{words.detail}</summary>
          <p>{failure.detail}</p>
        </details>
      )}
    </section>
  );
}
