/** Where something was taken down, with the way to take that off again. */
import { useState } from 'preact/hooks';
import { usePortion } from '../more_button';
import { placeName } from '../place_name';
import type { Position } from '../record/position';
import { change } from '../record/site_record';
import { standingAt } from '../record/undoing';
import { siteState } from '../site_state';
import { strings } from '../strings';

const words = strings.position;

/** Takes positions off the record; what failed is told where the record's troubles are. */
function takeOff(pointers: readonly string[]): void {
  void change(
    pointers.map((pointer) => ({ remove: pointer })),
    words.takenOff,
  ).catch(() => undefined);
}

/** One position; `pointer` is that of the field itself. */
export function PositionLine({
  position,
  pointer,
}: {
  position: Position | undefined;
  pointer: string;
}) {
  if (!position) return null;
  return (
    <span class="position-line">
      <span class="line">{words.at(position.latitude, position.longitude, position.accuracy)}</span>
      <button type="button" class="button quiet" onClick={() => takeOff([pointer])}>
        {words.takeOff}
      </button>
    </span>
  );
}

/** So many are listed at a time. */
const portion = 30;

/** Every position with what it belongs to: a look, a load, a walk, a problem. */
function EachPosition({ pointers }: { pointers: readonly string[] }) {
  const { shown, more } = usePortion(pointers, portion, { last: true });
  const state = siteState.value;
  return (
    <>
      {more}
      <ul class="taken">
        {shown.map((pointer) => (
          <li key={pointer}>
            {placeName(pointer.replace(/\/position$/, ''), state)}
            <PositionLine
              position={standingAt(state, pointer) as Position | undefined}
              pointer={pointer}
            />
          </li>
        ))}
      </ul>
    </>
  );
}

/** All positions of a site, to be taken off together or one by one; nothing where it has none. */
export function AllPositions({ pointers }: { pointers: readonly string[] }) {
  const [open, setOpen] = useState(false);
  if (pointers.length === 0) return null;
  return (
    <section class="all-positions">
      <h2>{words.heading}</h2>
      <p>
        {words.carry(pointers.length)} <span class="line">{words.stillInHistory}</span>
      </p>
      <button type="button" class="button quiet action" onClick={() => takeOff(pointers)}>
        {words.takeAllOff(pointers.length)}
      </button>
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{words.oneByOne}</summary>
        {open && <EachPosition pointers={pointers} />}
      </details>
    </section>
  );
}
