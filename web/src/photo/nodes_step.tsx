/** The stones under a grid, one after the other: both ends of both visible axes are tapped. */
import { useState } from 'preact/hooks';
import {
  gridOf,
  type MeasuredPhoto,
  type NodeStone,
  type PhotoTap,
  type Spot,
} from './photo_draft';
import { paintEnds, paintNodes } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { photoWords as words } from '../strings';

/** So much of the shorter side is shown about a node. */
const partShown = 0.5;

const spot = ([x, y]: Spot): Spot => [Math.round(x * 10) / 10, Math.round(y * 10) / 10];

export function NodesStep({
  photo,
  image,
  number,
  onTap,
}: {
  photo: MeasuredPhoto;
  image: ImageBitmap | undefined;
  number: number;
  onTap: (tap: PhotoTap) => Promise<boolean>;
}) {
  const { taken, nodes } = photo;
  const grid = gridOf(taken);
  const open = grid.findIndex((_, node) => !nodes.has(node));
  const present = open < 0 ? undefined : open;
  const [ends, setEnds] = useState<Spot[]>([]);
  const at = present === undefined ? undefined : grid[present];
  const put = (stone: NodeStone) => {
    if (present === undefined) return;
    void onTap({ of: taken.file, node: present, stone }).then((kept) => {
      if (kept) setEnds([]);
    });
  };
  const tapped = (place: Spot) => {
    if (present === undefined) return;
    const next = [...ends, spot(place)];
    setEnds(next);
    const [a, b, c, d] = next;
    if (a && b && c && d) put({ long: [a, b], short: [c, d] });
  };
  return (
    <>
      <p class="stones-so-far" role="status">
        {words.nodesDone(nodes.size, grid.length)}
      </p>
      <p class="pane-hint">
        {present === undefined ? words.allDone : (words.ends[ends.length] ?? '')}
      </p>
      <PhotoPane
        image={image}
        photo={taken}
        painted={[nodes, ends, present]}
        focus={at && { at, across: partShown * Math.min(taken.width, taken.height) }}
        tool={{
          label: words.picture(number, words.ends[ends.length] ?? words.allDone),
          handles: ends,
          onHandle: (index, place) =>
            setEnds(ends.map((end, which) => (which === index ? spot(place) : end))),
          onTap: tapped,
        }}
        paint={(context, pixel) => {
          paintNodes(context, pixel, grid, nodes, present);
          paintEnds(context, pixel, ends);
        }}
      />
      <div class="photo-tools">
        <button
          type="button"
          class="button quiet"
          disabled={present === undefined}
          onClick={() => put('mostly hidden')}
        >
          {words.hidden}
        </button>
        <button
          type="button"
          class="button quiet"
          disabled={present === undefined}
          onClick={() => put('no rock')}
        >
          {words.noRock}
        </button>
        {ends.length > 0 && (
          <button type="button" class="button quiet" onClick={() => setEnds(ends.slice(0, -1))}>
            {words.tapBack}
          </button>
        )}
      </div>
    </>
  );
}
