/** What tells the scale of a photo: boards that were found, balls or a staff, marked by two taps each and dragged to fit. */
import { EngineText } from '../engine_text';
import { useState } from 'preact/hooks';
import {
  type Board,
  type MeasuredPhoto,
  type PhotoScale,
  type Spot,
  type View,
} from './photo_draft';
import { paintHandle, paintScale } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { photoWords as words } from '../strings';
import { Choice, MarkFields } from './mark_fields';
import { handlesOf, type Marks, withHandle, withMark } from './scale_marks';
import { useScaleCautions } from './scale_cautions';

/** What the photo itself says against it, before anything is measured. */
function Cautions({ photo, cautions }: { photo: MeasuredPhoto; cautions: string[] }) {
  const { found, marks } = photo.taken;
  return (
    <>
      {[...cautions, ...((found ?? marks)?.cautions ?? [])].map((caution) => (
        <p class="caution" key={caution}>
          <EngineText text={caution} />
        </p>
      ))}
    </>
  );
}

export function ScaleStep({
  photo,
  number,
  lies,
  edges,
  image,
  label,
  onScale,
}: {
  photo: MeasuredPhoto;
  number: number;
  lies: string;
  /** Edges of boards by their numbers, as they are stated elsewhere. */
  edges: (board: Board) => string[];
  image: ImageBitmap | undefined;
  label: string;
  /** Resolves once the scale is kept. */
  onScale: (scale: PhotoScale) => Promise<unknown>;
}) {
  const [marks, setMarks] = useState<Marks>(photo.scale.staffs.length > 0 ? 'staffs' : 'balls');
  const [first, setFirst] = useState<Spot | undefined>(undefined);
  /** What is changed and not kept yet: the next change is made upon it. */
  const [changed, setChanged] = useState<PhotoScale | undefined>(undefined);
  const scale = changed ?? photo.scale;
  const put = (next: PhotoScale) => {
    setChanged(next);
    const settle = () => setChanged((now) => (now === next ? undefined : now));
    void onScale(next).then(settle);
  };
  const handles = handlesOf(scale);
  const cautions = useScaleCautions(photo, number, lies);
  return (
    <>
      <PhotoPane
        image={image}
        photo={photo.taken}
        painted={[scale, first]}
        tool={{
          label,
          handles,
          onHandle: (index, at, done) => {
            const next = withHandle(scale, index, at);
            if (done) put(next);
            else setChanged(next);
          },
          onTap: (at) => {
            if (first === undefined) {
              setFirst(at);
            } else {
              setFirst(undefined);
              put(withMark(scale, marks, first, at));
            }
          },
        }}
        paint={(context, pixel) => {
          paintScale(context, pixel, scale, ({ number: board, edge }) =>
            words.boardOn(board, edge),
          );
          for (const at of [...handles, ...(first ? [first] : [])]) {
            paintHandle(context, pixel, at);
          }
        }}
      />
      <p class="pane-hint">{marks === 'balls' ? words.tapBall : words.tapStaff}</p>
      <div class="photo-fields">
        <Choice
          legend={words.scaleBy}
          name="marks"
          labels={words.scales}
          value={marks}
          onValue={(next: Marks) => {
            setFirst(undefined);
            setMarks(next);
          }}
        />
        {handles.length === 0 && scale.boards.length === 0 && <p>{words.noMark}</p>}
        {scale.balls.some(({ diameter }) => diameter === '') && <p>{words.statedBalls}</p>}
        <Cautions photo={photo} cautions={cautions} />
        <MarkFields scale={scale} edges={edges} onScale={put} />
        <Choice
          legend={words.view}
          name="view"
          labels={words.views}
          value={scale.view}
          onValue={(view: View) => put({ ...scale, view })}
        />
      </div>
    </>
  );
}
