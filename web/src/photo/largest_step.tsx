/** The largest stone in sight: both its ends are tapped, and can be dragged. */
import { useState } from 'preact/hooks';
import { photoWords as words } from '../strings';
import type { LargestEnds, MeasuredPhoto, PhotoTap, Spot } from './photo_draft';
import { paintHandle, paintLargest } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { inTenths } from './tapped_ends';

export function LargestStep({
  photo,
  image,
  number,
  largest,
  onTap,
}: {
  photo: MeasuredPhoto;
  image: ImageBitmap | undefined;
  number: number;
  largest: LargestEnds | undefined;
  onTap: (tap: PhotoTap) => Promise<boolean>;
}) {
  const { file } = photo.taken;
  const [first, setFirst] = useState<Spot | undefined>(undefined);
  /** While an end is dragged. */
  const [dragged, setDragged] = useState<LargestEnds['ends'] | undefined>(undefined);
  const here = largest?.of === file ? largest.ends : undefined;
  const ends = dragged ?? here;
  const put = (at: LargestEnds['ends'] | null) =>
    onTap({ largestEnds: at && { of: file, ends: at } }).then(() => {
      setFirst(undefined);
      setDragged(undefined);
    });
  const moved = (index: number, at: Spot): LargestEnds['ends'] | undefined =>
    ends && (index === 0 ? [inTenths(at), ends[1]] : [ends[0], inTenths(at)]);
  const hint = first ? words.largestEnd : words.largestStart;
  return (
    <>
      <PhotoPane
        image={image}
        photo={photo.taken}
        painted={[ends, first]}
        tool={{
          label: words.picture(number, hint),
          handles: ends ?? [],
          onHandle: (index, at, done) => {
            const next = moved(index, at);
            if (next && done) void put(next);
            else setDragged(next);
          },
          onTap: (at) => {
            if (first) void put([first, inTenths(at)]);
            else setFirst(inTenths(at));
          },
        }}
        paint={(context, pixel) => {
          if (ends) paintLargest(context, pixel, ends);
          for (const at of [...(ends ?? []), ...(first ? [first] : [])]) {
            paintHandle(context, pixel, at);
          }
        }}
      />
      <p class="pane-hint">{hint}</p>
      {largest && !here && <p>{words.largestElsewhere}</p>}
      {largest && (
        <button type="button" class="button quiet" onClick={() => void put(null)}>
          {words.removeLargest}
        </button>
      )}
    </>
  );
}
