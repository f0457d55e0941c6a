/** The stones under a grid, one after the other: both ends of both visible axes are tapped. */
import { singly } from '../field/single_tap';
import { gridOf, type MeasuredPhoto, type NodeStone, type PhotoTap } from './photo_draft';
import { paintEnds, paintNodes } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { photoWords as words } from '../strings';
import { useTappedEnds } from './tapped_ends';

/** So much of the shorter side is shown about a node. */
const partShown = 0.5;

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
  const at = present === undefined ? undefined : grid[present];
  const put = (stone: NodeStone) => {
    if (present === undefined) return;
    void onTap({ of: taken.file, node: present, stone }).then((kept) => {
      if (kept) tapped.clear();
    });
  };
  const tapped = useTappedEnds(put);
  const { ends } = tapped;
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
          onHandle: tapped.move,
          onTap: (place) => present !== undefined && tapped.tap(place),
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
          onClick={singly(() => put('mostly hidden'))}
        >
          {words.hidden}
        </button>
        <button
          type="button"
          class="button quiet"
          disabled={present === undefined}
          onClick={singly(() => put('no rock'))}
        >
          {words.noRock}
        </button>
        {ends.length > 0 && (
          <button type="button" class="button quiet" onClick={tapped.back}>
            {words.tapBack}
          </button>
        )}
      </div>
    </>
  );
}
