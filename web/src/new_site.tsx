/** A site begun from nothing: its name, and then the field or the desk leads on. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { go } from './places';
import { documentOf, freshId, utcNow } from './record/revision';
import { author } from './settings';
import { openSite } from './site_assessment';
import { strings } from './strings';

const words = strings.newSite;

/** A document of one revision that names the site. */
export function newSiteDocument(name: string): string {
  return JSON.stringify(
    documentOf([
      {
        id: freshId('r'),
        after: [],
        time: utcNow(),
        author: author.peek() || 'not named',
        note: words.note,
        changes: [{ set: '/name', to: name }],
      },
    ]),
  );
}

/** Where there is room for its forms, a new site is laid out at the desk. As in desk.css. */
function atDesk(): boolean {
  return matchMedia('(min-width: 68rem)').matches;
}

/** Asks what the site is called and begins it; `children` may ask for more. */
export function BeginSite({
  onBegun,
  children,
}: {
  onBegun: () => void;
  children?: ComponentChildren;
}) {
  const [name, setName] = useState('');
  return (
    <form
      class="new-site"
      onSubmit={(event) => {
        event.preventDefault();
        const label = name.trim();
        if (label === '') return;
        setName('');
        const document = newSiteDocument(label);
        openSite(Promise.resolve({ site: { label, origin: 'device', document, files: [] } }));
        onBegun();
      }}
    >
      <label class="field-label">
        <span>{words.name}</span>
        <input
          type="text"
          name="site-name"
          required
          maxLength={120}
          value={name}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {children}
      <button type="submit" class="button">
        {words.begin}
      </button>
    </form>
  );
}

export function NewSite({ onBegun }: { onBegun: () => void }) {
  return (
    <>
      <h3>{words.heading}</h3>
      <BeginSite
        onBegun={() => {
          onBegun();
          go(atDesk() ? { at: 'desk', show: 'start', step: 2 } : { at: 'field' });
        }}
      />
    </>
  );
}
