/** The handbook: its index with a search by words, or one page of it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { addressOf } from '../places';
import { strings } from '../strings';
import { handbookPages, type HelpPage, pagesWith, shownOf } from './handbook';
import './help.css';

const words = strings.help;

function PageLink({ page, about }: { page: HelpPage; about?: string }) {
  return (
    <li>
      <a href={addressOf({ at: 'help', page: page.id })} lang={page.language}>
        {page.title}
      </a>
      {about && (
        <span class="line" lang={page.language}>
          {about}
        </span>
      )}
    </li>
  );
}

/** Kept while the handbook is open, so that the way back leads to what was found. */
let lastSought = '';

function HelpIndex({ pages }: { pages: HelpPage[] }) {
  const [sought, setSought] = useState(lastSought);
  const found = pagesWith(pages, sought);
  const looking = sought.trim() !== '';
  const groups = [...new Set(pages.map(({ group }) => group))];
  return (
    <section class="handbook" aria-labelledby="help-heading">
      <h1 id="help-heading">{words.heading}</h1>
      <label class="field-label">
        <span>{words.search}</span>
        <input
          type="search"
          name="sought"
          maxLength={80}
          value={sought}
          onInput={({ currentTarget }) => {
            lastSought = currentTarget.value;
            setSought(currentTarget.value);
          }}
        />
      </label>
      <p role="status">{looking ? words.found(found.length) : ''}</p>
      {words.someInEnglish && <p class="origin">{words.someInEnglish}</p>}
      {looking ? (
        <ul class="help-list">
          {found.map(({ page, about }) => (
            <PageLink key={page.id} page={page} about={about} />
          ))}
        </ul>
      ) : (
        groups.map((group) => (
          <section key={group}>
            <h2>{words.groups[group] ?? group}</h2>
            <ul class="help-list">
              {pages
                .filter((page) => page.group === group)
                .map((page) => (
                  <PageLink key={page.id} page={page} />
                ))}
            </ul>
          </section>
        ))
      )}
    </section>
  );
}

function OnePage({ page }: { page: HelpPage }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState(page.html);
  useEffect(() => {
    heading.current?.focus();
    let wanted = true;
    setShown(page.html);
    void shownOf(page).then((html) => wanted && setShown(html));
    return () => {
      wanted = false;
    };
  }, [page]);
  return (
    <article class="handbook" aria-labelledby="help-heading">
      <p class="help-ways">
        <button type="button" class="button quiet" onClick={() => history.back()}>
          {words.back}
        </button>
        <a href={addressOf({ at: 'help' })}>{words.all}</a>
      </p>
      <h1 id="help-heading" tabIndex={-1} ref={heading} lang={page.language}>
        {page.title}
      </h1>
      {page.language !== strings.code && <p class="origin">{words.inEnglish}</p>}
      {/* Made of our own handbook when the application is built. */}
      <div class="help-text" lang={page.language} dangerouslySetInnerHTML={{ __html: shown }} />
      <p class="origin">{words.units}</p>
    </article>
  );
}

export function HelpScreen({ page }: { page?: string }) {
  const [pages, setPages] = useState<HelpPage[] | 'failed' | undefined>(undefined);
  useEffect(() => {
    handbookPages(strings.code).then(setPages, () => setPages('failed'));
  }, []);
  if (pages === undefined) return <p role="status">{words.opening}</p>;
  if (pages === 'failed') return <p role="alert">{words.notOpened}</p>;
  const one = pages.find(({ id }) => id === page);
  if (one) return <OnePage page={one} />;
  return (
    <>
      {page !== undefined && <p role="alert">{words.noSuchPage}</p>}
      <HelpIndex pages={pages} />
    </>
  );
}
