/** The form at the desk: its fields, what stands in the way, and keeping it. */
import { ProblemWords } from '../engine_problem';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Problem } from '../findings';
import { AuthorField } from '../field/author_field';
import { placeName } from '../place_name';
import { siteState } from '../site_state';
import { strings } from '../strings';
import type { DeskForm } from './desk_form';
import { fieldName } from './field_words';
import { elementAt, Form } from './form_context';

const words = strings.desk.form;

/** Takes the user to what a problem is about; to the nearest around it that can be reached. */
function goToProblem(where: string): void {
  for (let at = where; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
    const element = document.getElementById(elementAt(at));
    if (element) {
      element.focus();
      element.scrollIntoView({ block: 'center' });
      return;
    }
  }
}

/** Everything in the way, each with the way to it. */
function Summary({ problems }: { problems: readonly Problem[] }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.focus(), []);
  return (
    <div class="form-problems" role="alert" tabIndex={-1} ref={place}>
      <p>{words.stopped(problems.length)}</p>
      <ul>
        {problems.map((problem) => {
          const { what, where, file } = problem;
          return (
            <li key={`${where} ${what}`}>
              <b>{file ? `${file}, ${where}` : placeName(where, siteState.value)}</b>{' '}
              <ProblemWords problem={problem} />{' '}
              {!file && (
                <button type="button" class="as-link" onClick={() => goToProblem(where)}>
                  {words.goTo(fieldName(where.slice(where.lastIndexOf('/') + 1)))}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

export function FormFrame({
  form,
  keepWords = words.keep,
  onKeep,
  children,
  more,
}: {
  form: DeskForm;
  keepWords?: string;
  onKeep: () => void;
  children: ComponentChildren;
  /** Other things that can be done with it. */
  more?: ComponentChildren;
}) {
  return (
    <Form.Provider value={form.context}>
      <form
        class="desk-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          onKeep();
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) onKeep();
        }}
      >
        {form.restored && <p class="restored">{words.leftFromBefore}</p>}
        {children}
        <AuthorField />
        {form.tried && form.problems.length > 0 && <Summary problems={form.problems} />}
        {form.trouble && (
          <p class="trouble" role="alert">
            {form.trouble}
          </p>
        )}
        <div class="form-bar">
          <button type="submit" class="button" disabled={form.keeping || !form.changed}>
            {keepWords}
          </button>
          <button
            type="button"
            class="button quiet"
            disabled={form.keeping || !form.changed}
            onClick={form.discard}
          >
            {words.asItWas}
          </button>
          <span role="status">{form.changed ? words.notKept : form.fresh ? '' : words.kept}</span>
        </div>
        {more}
      </form>
    </Form.Provider>
  );
}
