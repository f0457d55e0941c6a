/** Papers about the open site for one reader each, kept as pages to print and sign. */
import { useState } from 'preact/hooks';
import { problemWords } from './engine_problem';
import { saveFile } from './save_file';
import { type PaperAsked, writePaper } from './site_assessment';
import { siteState } from './site_state';
import { strings } from './strings';

const words = strings.papers;

/** Today by the clock of this device, "2026-05-28". */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** How far the clock of this device is ahead of UTC on a day, "-06:00". */
function clockOn(day: string): string {
  const ahead = -new Date(`${day}T12:00`).getTimezoneOffset();
  const two = (number: number) => String(Math.floor(number)).padStart(2, '0');
  const size = Math.abs(Number.isNaN(ahead) ? 0 : ahead);
  return `${ahead < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`;
}

export function Papers() {
  const [day, setDay] = useState(today);
  const [trouble, setTrouble] = useState('');
  const { lots = {} } = siteState.value;

  const write = (paper: PaperAsked) => {
    setTrouble('');
    writePaper(paper)
      .then(({ html, problems }) => {
        if (html) saveFile(`${paper.kind}.html`, 'text/html', html);
        else setTrouble((problems ?? []).map(problemWords).join(' '));
      })
      .catch(() => setTrouble(words.failed));
  };

  return (
    <details class="papers">
      <summary>{words.heading}</summary>
      {words.inEnglish && <p class="written-in-english">{words.inEnglish}</p>}
      <div class="papers-of-site">
        {(['design-book', 'placing-record'] as const).map((kind) => (
          <button key={kind} type="button" class="button quiet" onClick={() => write({ kind })}>
            {words[kind]}
          </button>
        ))}
        {Object.entries(lots).map(([lot, { name }]) => (
          <button
            key={lot}
            type="button"
            class="button quiet"
            onClick={() => write({ kind: 'lot-acceptance', lot })}
          >
            {words.lotAcceptance(name)}
          </button>
        ))}
        <span class="paper-of-day">
          <label>
            {words.day}{' '}
            <input type="date" value={day} onInput={(event) => setDay(event.currentTarget.value)} />
          </label>
          <button
            type="button"
            class="button quiet"
            onClick={() => write({ kind: 'daily-report', day, clock: clockOn(day) })}
          >
            {words['daily-report']}
          </button>
        </span>
      </div>
      <p role="status">{trouble}</p>
    </details>
  );
}
