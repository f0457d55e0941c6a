/** Where something was taken down, with the way to take that off again. */
import type { Position } from '../record/position';
import { change } from '../record/site_record';
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

/** All positions of a site, to be taken off together; nothing where it has none. */
export function AllPositions({ pointers }: { pointers: readonly string[] }) {
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
    </section>
  );
}
