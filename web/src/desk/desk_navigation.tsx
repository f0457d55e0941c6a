/** The parts of the site, at the side of the desk; folded on a narrow screen. */
import { useState } from 'preact/hooks';
import { addressOf, type DeskPlace } from '../places';
import { strings } from '../strings';
import { navigation } from './arrangement';
import { collections, singleParts } from './document_schema';
import { partName } from './field_words';
import { itemsOf, nameOfItem } from './list_page';

const words = strings.desk;

/** As in desk.css. */
const wide = '(min-width: 68rem)';

/** Items stand below their part up to this number; more are found in its list. */
const mostItems = 8;

/** Every part that the navigation does not name has its place under the record. */
function otherParts(): string[] {
  const named = new Set(['name', 'note', ...navigation.flatMap(({ parts }) => parts)]);
  return [...collections.keys(), ...singleParts.keys()].filter((part) => !named.has(part));
}

function PartLink({ part, here }: { part: string; here: DeskPlace }) {
  const items = collections.has(part) ? itemsOf(part) : [];
  const isHere = 'part' in here && here.part === part;
  const id = 'id' in here ? here.id : undefined;
  const current = (is: boolean) => (is ? { 'aria-current': 'page' as const } : {});
  return (
    <li>
      <a
        href={addressOf({ at: 'desk', show: 'part', part })}
        {...current(isHere && id === undefined)}
      >
        {partName(part)} {items.length > 0 && <span class="number">{items.length}</span>}
      </a>
      {isHere && items.length > 0 && items.length <= mostItems && (
        <ul>
          {items.map(([one, item]) => (
            <li key={one}>
              <a
                href={addressOf({ at: 'desk', show: 'part', part, id: one })}
                {...current(one === id)}
              >
                {nameOfItem(one, item)}
              </a>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

export function DeskNavigation({ here }: { here: DeskPlace }) {
  const [open, setOpen] = useState(() => matchMedia(wide).matches);
  const screens = [
    [{ at: 'desk', show: 'board' }, words.board],
    [{ at: 'desk', show: 'timeline' }, words.timeline],
    [{ at: 'desk', show: 'site' }, words.siteItself],
    [{ at: 'desk', show: 'blend' }, words.studies.blend.heading],
    [{ at: 'desk', show: 'start' }, words.start.heading],
  ] as const;
  const groups = [...navigation, { heading: words.groups.record, parts: otherParts() }];
  return (
    <nav class="desk-navigation" aria-label={words.navigation}>
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{words.navigation}</summary>
        <ul>
          {screens.map(([to, name]) => (
            <li key={name}>
              <a
                href={addressOf(to)}
                {...(to.show === here.show ? { 'aria-current': 'page' as const } : {})}
              >
                {name}
              </a>
            </li>
          ))}
        </ul>
        {groups.map(({ heading, parts }) => (
          <section key={heading}>
            <h2>{heading}</h2>
            <ul>
              {parts.map((part) => (
                <PartLink key={part} part={part} here={here} />
              ))}
            </ul>
          </section>
        ))}
      </details>
    </nav>
  );
}
